/** What can be adjusted at an axle; bars have their positions instead. */
export type AxleLever =
  | "springRate"
  | "seatTurns"
  | "tyrePressure"
  | "camber"
  | "toe"
  | "rollCentreHeight"
  | "damperBump"
  | "damperRebound";

/** What can be adjusted on the whole car. */
export type CarLever = "brakeFrontShare" | "driver" | "passenger" | "fuel" | "ballast";

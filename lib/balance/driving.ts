import { requireInRange } from "../check.js";

/** What the car is doing besides turning: at a speed, or round a corner of some radius. */
export type Driving = Progress & (AtSpeed | RoundCorner);

interface AtSpeed {
  /** m/s, above 0; the radius follows from the lateral acceleration */
  readonly speed: number;
  readonly cornerRadius?: undefined;
}

interface RoundCorner {
  /** m of the path of the centre of gravity, above 0; the speed follows: V² = ay·R */
  readonly cornerRadius: number;
  readonly speed?: undefined;
}

/** What it does along the path, and what road it is on. */
export interface Progress {
  /** m/s² along the path, above 0 when gaining speed; 0 when left out */
  readonly longitudinalAcceleration?: number;
  /** m/s³, how fast lateral acceleration grows to the left; 0 when left out: a steady turn */
  readonly lateralJerk?: number;
  /** rad that the road rises along the path; 0 when left out */
  readonly grade?: number;
  /** rad that the road falls to the left, above 0 helps a left turn; 0 when left out */
  readonly bank?: number;
}

/** Checks what the car is doing and passes it through. */
export function requireDriving(driving: Driving): Driving {
  if (driving.cornerRadius === undefined) requireInRange("speed", driving.speed, 0.5, 200, "m/s");
  else requireInRange("corner radius", driving.cornerRadius, 1, 1e4, "m");
  const { longitudinalAcceleration = 0, lateralJerk = 0, grade = 0, bank = 0 } = driving;
  requireInRange("longitudinal acceleration", longitudinalAcceleration, -50, 50, "m/s²");
  requireInRange("lateral jerk", lateralJerk, -500, 500, "m/s³");
  requireInRange("grade", grade, -0.5, 0.5, "rad");
  requireInRange("bank", bank, -0.8, 0.8, "rad");
  return driving;
}

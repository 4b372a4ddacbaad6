/** How each lever is called. */
export const levers: Readonly<Record<string, string>> = {
  springRate: "Spring rate",
  seatTurns: "Spring seats",
  tyrePressure: "Tyre pressure",
  camber: "Camber",
  toe: "Toe",
  rollCentreHeight: "Roll centre height",
  damperBump: "Damper, bump",
  damperRebound: "Damper, rebound",
  brakeFrontShare: "Front brake share",
  driver: "Driver’s mass",
  passenger: "Passenger’s mass",
  fuel: "Fuel",
  ballast: "Ballast",
};

export const reachEnds: Readonly<Record<string, string>> = {
  min: "from",
  max: "to",
  step: "in steps of",
};

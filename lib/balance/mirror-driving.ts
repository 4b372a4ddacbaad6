import type { Driving } from "./driving.js";

/** What the driver does, seen in a mirror: lateral acceleration grows to the other side. */
export function mirrorDriving(driving: Driving): Driving {
  const { lateralJerk } = driving;
  return lateralJerk === undefined ? driving : { ...driving, lateralJerk: -lateralJerk };
}

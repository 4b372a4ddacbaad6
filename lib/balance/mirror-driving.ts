import type { Driving } from "./driving.js";

/** What the driver does and the road, seen in a mirror. */
export function mirrorDriving(driving: Driving): Driving {
  const { lateralJerk, bank } = driving;
  return {
    ...driving,
    ...(lateralJerk !== undefined && { lateralJerk: -lateralJerk }),
    ...(bank !== undefined && { bank: -bank }),
  };
}

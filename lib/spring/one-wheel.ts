import { requireInRange } from "../check.js";

/**
 * Stiffness that one independent wheel meets when it alone rises, as over a kerb, N/m.
 *
 * The bar is twisted by one end only, so it adds half of what each wheel gets of it in roll.
 *
 * @param axle - wheelRate (N/m), barRollStiffness (N·m/rad), track (m)
 * @example
 * oneWheelRate({ wheelRate: 25e3, barRollStiffness: 18e3, track: 1.5 })
 * // → 33000, by hand: 25 000 + 18 000/1.5²
 */
export function oneWheelRate(axle: {
  wheelRate: number;
  barRollStiffness: number;
  track: number;
}): number {
  requireInRange("wheel rate", axle.wheelRate, 0, Infinity, "N/m");
  requireInRange("roll stiffness of the bar", axle.barRollStiffness, 0, Infinity, "N·m/rad");
  requireInRange("track", axle.track, 0.1, 10, "m");
  return axle.wheelRate + axle.barRollStiffness / axle.track ** 2; // k·i², for K = k·i²·t²
}

import { requireInRange } from "../check.js";

/**
 * Stiffness of a spring as the wheel feels it, N/m.
 *
 * @param springRate - N/m, at least 0
 * @param motionRatio - spring travel over wheel travel, above 0 (0.7 means that the spring moves
 * 7 mm when the wheel moves 10 mm)
 * @throws Refusal when a number is outside its range
 */
export function wheelRate(springRate: number, motionRatio: number): number {
  requireInRange("spring rate", springRate, 0, Infinity, "N/m");
  requireInRange("motion ratio", motionRatio, 0.01, 10);
  return springRate * motionRatio ** 2; // force and travel both scale – Milliken 1995, ch. 16
}

/**
 * Stiffness of two springs one on top of the other, N/m or N·m/rad; Infinity for a rigid one.
 *
 * @throws Refusal when a stiffness is negative
 */
export function springsInSeries(first: number, second: number): number {
  const soft = requireStiffness("first stiffness", Math.min(first, second));
  const stiff = requireStiffness("second stiffness", Math.max(first, second));
  return soft === 0 ? 0 : soft / (1 + soft / stiff); // 1/k = 1/k₁ + 1/k₂ – series law
}

/** A stiffness, which may be without end: a rigid link. */
function requireStiffness(field: string, value: number): number {
  return value === Infinity ? value : requireInRange(field, value, 0, Infinity);
}

/**
 * Stiffness between body and road at one wheel: spring and tyre in series, N/m.
 *
 * @example
 * rideRate(30e3, 200e3) // → 26087.0, by hand: 1/(1/30 + 1/200) N/mm
 */
export function rideRate(wheel: number, tyreStiffness: number): number {
  return springsInSeries(wheel, tyreStiffness); // – Milliken 1995, ch. 16
}

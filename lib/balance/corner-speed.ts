import { requireInRange } from "../check.js";

/**
 * Speed at which a corner asks for a lateral acceleration, m/s: v = √(ay·R).
 *
 * @param lateralAcceleration - m/s², at least 0
 * @param cornerRadius - m, above 0
 * @example
 * cornerSpeed(9, 100) // → 30, by hand: √(9·100)
 */
export function cornerSpeed(lateralAcceleration: number, cornerRadius: number): number {
  requireInRange("lateral acceleration", lateralAcceleration, 0, 1e3, "m/s²");
  requireInRange("corner radius", cornerRadius, 0.1, 1e5, "m");
  return Math.sqrt(lateralAcceleration * cornerRadius); // ay = v²/R
}

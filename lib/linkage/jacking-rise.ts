import { requireInRange } from "../check.js";

/**
 * How far jacking lifts the body at one axle, m, above 0 up.
 *
 * The links push up, both springs let go of as much: J = 2·k·z. The tyres do not notice, since the
 * force is between links and springs.
 *
 * @param jackingForce - N, as `jacking(…).total`
 * @param wheelRate - N/m at each wheel, without tyre, above 0
 * @example
 * riseFromJacking(150, 25e3) // → 0.003, by hand: 150/(2·25 000)
 */
export function riseFromJacking(jackingForce: number, wheelRate: number): number {
  requireInRange("jacking force", jackingForce, -1e6, 1e6, "N");
  requireInRange("wheel rate", wheelRate, 1, 1e9, "N/m");
  return jackingForce / (2 * wheelRate);
}

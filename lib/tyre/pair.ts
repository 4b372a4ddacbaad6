import { requireInRange } from "../check.js";
import { findPeak } from "../solve.js";
import type { Tyre } from "./tyre.js";

/** Two equal tyres of one axle that share a load unequally. */
export interface TyrePair {
  /** Half the load of the axle, N. */
  readonly meanLoad: number;
  /** Load moved from the inner to the outer tyre, N, from 0 to the mean load. */
  readonly transfer: number;
  /** Pressure of both tyres, Pa; left out: nominal. */
  readonly pressure?: number;
  /** Lean of both wheels into the turn, rad; left out: upright. */
  readonly inclination?: number;
}

/**
 * Loads of the outer and the inner tyre, N.
 *
 * @throws Refusal when the transfer is negative or more than the inner tyre carries
 */
export function pairLoads({ meanLoad, transfer }: TyrePair): { outer: number; inner: number } {
  requireInRange("mean load", meanLoad, 0, Infinity, "N");
  requireInRange("transfer", transfer, 0, meanLoad, "N");
  return { outer: meanLoad + transfer, inner: meanLoad - transfer };
}

/**
 * Side force of both tyres together at one slip angle, N.
 *
 * @example
 * pairSideForce(magicFormula1987, { meanLoad: 4000, transfer: 2000, slipAngle: fromHandy("angle", 8) })
 * // → 7094.8, from the published coefficients: 1928.73 + 5166.09
 */
export function pairSideForce(tyre: Tyre, pair: TyrePair & { slipAngle: number }): number {
  const { outer, inner } = pairLoads(pair);
  return tyre.sideForce({ ...pair, load: outer }) + tyre.sideForce({ ...pair, load: inner });
}

/**
 * Slip angle at which both tyres together give most, rad.
 *
 * @example
 * pairPeakSlipAngle(magicFormula1987, { meanLoad: 4000, transfer: 1000 })
 * // → 0.16929, from the published coefficients by another program
 */
export function pairPeakSlipAngle(tyre: Tyre, pair: TyrePair): number {
  const { outer, inner } = pairLoads(pair);
  const ownPeaks = [outer, inner].map((load) => tyre.peakSlipAngle({ ...pair, load }));
  const [low, high] = [Math.min(...ownPeaks), Math.max(...ownPeaks)];
  return findPeak((slipAngle) => pairSideForce(tyre, { ...pair, slipAngle }), low, high).at;
}

/**
 * Greatest side force of both tyres together when they run at one slip angle, N.
 *
 * @example
 * pairPeakSideForce(magicFormula1987, { meanLoad: 4000, transfer: 1000 })
 * // → 7334.5, from the published coefficients by another program
 */
export function pairPeakSideForce(tyre: Tyre, pair: TyrePair): number {
  return pairSideForce(tyre, { ...pair, slipAngle: pairPeakSlipAngle(tyre, pair) });
}

/**
 * Sum of what each tyre could give at the best slip angle of its own, N.
 *
 * @example
 * pairOwnPeaks(clubTyre, { meanLoad: 3000, transfer: 1000 })
 * // → 6800, by hand: 4000·1.10 + 2000·1.20
 */
export function pairOwnPeaks(tyre: Tyre, pair: TyrePair): number {
  const { outer, inner } = pairLoads(pair);
  return (
    tyre.peakSideForce({ ...pair, load: outer }) + tyre.peakSideForce({ ...pair, load: inner })
  );
}

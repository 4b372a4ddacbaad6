import { requireInRange } from "../check.js";
import { findRoot } from "../solve.js";
import { pairLoads, pairPeakSlipAngle, pairSideForce, type TyrePair } from "./pair.js";
import type { Tyre } from "./tyre.js";

/** Who makes how much of an axle's side force. */
export interface PairShare {
  /** rad, the same for both tyres */
  readonly slipAngle: number;
  /** Side force of the outer tyre, N. */
  readonly outer: number;
  /** Side force of the inner tyre, N. */
  readonly inner: number;
}

/**
 * How two equal tyres that run at one slip angle share a side force.
 *
 * The tyre with more load makes more of it, so the shares part as the turn tightens.
 *
 * @param pair - loads as for `pairSideForce`, and the sideForce (N, to the left) of both together
 * @throws Refusal when the pair cannot make that force
 * @example
 * pairShare(clubTyre, { meanLoad: 3000, transfer: 0, sideForce: 4000 }).outer
 * // → 2000, by hand: both carry alike
 */
export function pairShare(tyre: Tyre, pair: TyrePair & { sideForce: number }): PairShare {
  const peak = pairPeakSlipAngle(tyre, pair);
  const most = pairSideForce(tyre, { ...pair, slipAngle: peak });
  const wanted = requireInRange("side force", pair.sideForce, 0, most, "N");
  const excess = (slipAngle: number) => pairSideForce(tyre, { ...pair, slipAngle }) - wanted;
  const slipAngle = wanted === most ? peak : findRoot(excess, START, peak, 1e-9);
  const { outer, inner } = pairLoads(pair);
  return {
    slipAngle,
    outer: tyre.sideForce({ ...pair, load: outer, slipAngle }),
    inner: tyre.sideForce({ ...pair, load: inner, slipAngle }),
  };
}

const START = -0.1; // rad: a leaning tyre pulls sideways before it slips

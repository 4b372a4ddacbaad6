import { requireInRange } from "../check.js";
import { lateralLoadTransfer } from "../load/transfer.js";
import { GRAVITY } from "../units.js";
import { hardestTurn } from "./hardest-turn.js";
import type { Grip } from "./limit.js";

/** Two equal tyres that hold a mass in a turn by themselves. */
export interface PairInTurn {
  /** kg */
  readonly mass: number;
  /** m above the ground */
  readonly centreOfGravityHeight: number;
  /** m between the tyre centres */
  readonly track: number;
}

/** The fastest turn of a pair. */
export interface PairLimit {
  /** m/s² */
  readonly lateralAcceleration: number;
  /** N moved from the inner to the outer tyre in that turn */
  readonly transfer: number;
  /** The inner tyre leaves the ground before the tyres let go. */
  readonly lifts: boolean;
}

/**
 * Lateral acceleration at which two tyres need all their grip to hold their mass.
 *
 * @param grip - greatest side force of one tyre, N, at a load, N
 * @throws Refusal when a number is outside its range, and when the pair would hold 100 m/s²
 * @example
 * pairLimit((load) => 1.1 * load, { mass: 500, centreOfGravityHeight: 0.5, track: 1.5 }).transfer
 * // → 1797.9, by hand: 500·1.1·9.80665·0.5/1.5
 */
export function pairLimit(grip: Grip, pair: PairInTurn): PairLimit {
  requireInRange("mass", pair.mass, 1, 1e5, "kg");
  const meanLoad = (pair.mass * GRAVITY) / 2;
  const transferAt = (lateralAcceleration: number) =>
    lateralLoadTransfer({ ...pair, lateralAcceleration });
  const spare = (ay: number) => {
    const moved = Math.min(meanLoad, transferAt(ay));
    return grip(meanLoad + moved) + grip(meanLoad - moved) - pair.mass * ay;
  };
  const slides = hardestTurn(spare, 1e-10);
  const lifts = transferAt(slides) > meanLoad;
  const lateralAcceleration = lifts ? (slides * meanLoad) / transferAt(slides) : slides;
  return { lateralAcceleration, transfer: transferAt(lateralAcceleration), lifts };
}

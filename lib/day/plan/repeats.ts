import { requireInRange } from "../../check.js";
import { shareBelow } from "../../normal.js";
import { findRoot } from "../../solve.js";

/** Laps driven before and after a change, and how much they scatter. */
export interface Repeats {
  /** Standard deviation of single laps, in any unit, above 0. */
  readonly spread: number;
  /** Laps after the change, at least 1. */
  readonly laps: number;
  /** Laps before it, return runs counted in; as many as after it when left out. */
  readonly baselineLaps?: number;
}

/**
 * How much the difference of two means scatters, in the unit of the spread.
 *
 * Laps are taken to scatter by chance alone, without drift.
 *
 * @throws Refusal for a spread of 0 or less, or fewer laps than one
 * @example
 * spreadOfDifference({ spread: 0.4, laps: 4 }) // → 0.2828, by hand: 0.4·√(1/4 + 1/4)
 */
export function spreadOfDifference({ spread, laps, baselineLaps = laps }: Repeats): number {
  requireInRange("spread", spread, Number.MIN_VALUE, Infinity);
  requireInRange("laps", laps, 1, Infinity);
  requireInRange("baseline laps", baselineLaps, 1, Infinity);
  return spread * Math.sqrt(1 / laps + 1 / baselineLaps); // variances of independent means add
}

/**
 * How often the means come out in the right order, 0.5–1: a half is a coin thrown.
 *
 * @param difference - what the change really does, in the unit of the spread
 * @throws Refusal as `spreadOfDifference`
 * @example
 * chanceOfRightOrder(0, { spread: 0.4, laps: 4 }) // → 0.5, a coin thrown
 */
export function chanceOfRightOrder(difference: number, repeats: Repeats): number {
  requireInRange("difference", difference, -Infinity, Infinity);
  return shareBelow(Math.abs(difference) / spreadOfDifference(repeats));
}

/**
 * Laps before, and as many after, until the means come out in the right order so often; a whole
 * number, Infinity for a change that does nothing.
 *
 * @param difference - what the change really does, in the unit of the spread
 * @param spread - standard deviation of single laps, above 0
 * @param chance - 0.5–0.999; nineteen times in twenty when left out
 * @example
 * lapsToTell(0.3, 0.4) // → 10, by hand: 2·(1.645·0.4/0.3)² is 9.6
 */
export function lapsToTell(difference: number, spread: number, chance = 0.95): number {
  requireInRange("difference", difference, -Infinity, Infinity);
  requireInRange("spread", spread, Number.MIN_VALUE, Infinity);
  requireInRange("chance", chance, 0.5, 0.999);
  const deviations = findRoot((x) => shareBelow(x) - chance, 0, 4);
  return Math.max(1, Math.ceil(2 * ((deviations * spread) / difference) ** 2)); // d = z·s·√(2/n)
}

/**
 * What a change did, judged against the baseline before it and the one after it.
 *
 * Whatever drifts evenly from run to run (tyres, track, fuel, driver) is in both baselines alike and
 * drops out.
 *
 * @example
 * againstBothBaselines({ before: 60, changed: 59.5, after: 60.4 }) // → -0.7, by hand: 59.5 − 60.2
 */
export function againstBothBaselines(runs: {
  before: number;
  changed: number;
  after: number;
}): number {
  return runs.changed - (runs.before + runs.after) / 2;
}

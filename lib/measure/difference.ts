import { shareBelow } from "../normal.js";
import { Refusal } from "../refusal.js";
import { shareWithinT, studentT } from "../tails.js";
import { inQuadrature, type Measured, NINE_IN_TEN } from "./measured.js";
import { fromRepeats } from "./repeats.js";

/** What something did to a number that was measured before and after, and whether that was measured. */
export interface Changed {
  /** SI, after less before */
  readonly value: number;
  /** To each side within which the truth lies nine times in ten, at least 0. */
  readonly within: number;
  /** Whether it is there: 0 lies outside of where the truth is nineteen times in twenty. */
  readonly measured: boolean;
  /** How often chance alone makes a difference so large, 0–1. */
  readonly byChance: number;
}

/** The same from laps of runs. */
export interface Difference extends Changed {
  /** Whether each run was held against the one next to it, so that what drifts evenly drops out. */
  readonly paired: boolean;
  /**
   * Laps more of each set-up, in runs of three beside each other, until a difference as large as this
   * would be measured four times in five; 0 where it is; Infinity for more than 200
   */
  readonly lapsMore: number;
  /** SI from one run to the next, taken off; nothing where nobody went back to the first set-up. */
  readonly drift?: Changed;
}

/** What the laps of one run come to. */
export interface RunMean {
  /** SI, the mean of its laps. */
  readonly value: number;
  /** How many laps it is the mean of. */
  readonly laps: number;
  /** Standard deviation of one of them, never less than the stopwatch's. */
  readonly scatter: number;
  /** What the mean is off by the stopwatch alone. */
  readonly byStopwatch: number;
}

/** Laps whose mean counts: the fastest of a run. */
export const FASTEST = 3;
export const CHANCE = 0.95;
const MOSTLY = 0.8; // how often the laps that are asked for would show it
const MOST_LAPS = 200;

/**
 * What differs between runs on two set-ups.
 *
 * From two runs of each on, every run is held against the one beside it: whatever drifts evenly in
 * the day is in both. Of one run each, laps are held against laps, and a drift would count as the
 * change.
 *
 * @param before - in the order in which they were driven
 * @param after - the first of these was driven next to the first of those, and so on
 * @throws Refusal unless both have a run, of two laps where there is one each
 */
export function differenceOfRuns(
  before: readonly RunMean[],
  after: readonly RunMean[],
): Difference {
  const pairs = Math.min(before.length, after.length);
  if (pairs === 0) throw new Refusal("no-samples", "both set-ups need a run.");
  const { value, spread, freedom } =
    pairs >= 2 ? byPairs(before, after, pairs) : byLaps(before, after);
  const measured = Math.abs(value) > spread * studentT(CHANCE, freedom);
  const laps = [...before, ...after].reduce((sum, run) => sum + run.laps, 0) / 2;
  return {
    value,
    within: spread * studentT(0.9, freedom),
    paired: pairs >= 2,
    measured,
    byChance: 1 - shareWithinT(Math.abs(value) / spread, freedom),
    lapsMore: measured ? 0 : lapsUntil(Math.abs(value), spread * Math.sqrt(laps / 2), laps),
  };
}

/**
 * What differs between two numbers that were each measured by themselves.
 *
 * @example
 * changedFrom({ value: 10, spread: 3 }, { value: 20, spread: 4 }).measured // → true, by hand: 10 = 2.0·√(3² + 4²) > 1.96·5
 */
export function changedFrom(before: Measured, after: Measured): Changed {
  const value = after.value - before.value;
  const spread = inQuadrature(before.spread, after.spread);
  const byChance = spread === 0 ? Number(value === 0) : 2 * shareBelow(-Math.abs(value) / spread);
  return { value, within: NINE_IN_TEN * spread, measured: byChance < 1 - CHANCE, byChance };
}

interface Differs {
  readonly value: number;
  /** standard deviation of that mean */
  readonly spread: number;
  readonly freedom: number;
}

function byPairs(before: readonly RunMean[], after: readonly RunMean[], pairs: number): Differs {
  const used = [before, after].map((runs) => runs.slice(0, pairs));
  const differences = before.slice(0, pairs).map((one, i) => (after[i]?.value ?? 0) - one.value);
  const { value, scatter = 0 } = fromRepeats({ values: differences, tool: 0 });
  const byStopwatch = inQuadrature(...used.flat().map((run) => run.byStopwatch)) / pairs;
  return { value, spread: Math.max(scatter / Math.sqrt(pairs), byStopwatch), freedom: pairs - 1 };
}

function byLaps([before]: readonly RunMean[], [after]: readonly RunMean[]): Differs {
  const [a = 0, b = 0] = [before?.laps, after?.laps];
  if (before === undefined || after === undefined || Math.min(a, b) < 2)
    throw new Refusal("too-few-samples", "one run each needs two clean laps at least.");
  const freedom = a + b - 2;
  const squares = (a - 1) * before.scatter ** 2 + (b - 1) * after.scatter ** 2;
  const spread = Math.sqrt(squares / freedom) * Math.sqrt(1 / a + 1 / b);
  return { value: after.value - before.value, spread, freedom };
}

/**
 * How many laps more until such a difference is mostly called measured, while laps scatter as they
 * do: runs of three laps, one set-up beside the other.
 *
 * @see the size of a sample for Student's t, Chow, Shao and Wang 2008, ch. 3.1 (from memory)
 */
export function lapsUntil(difference: number, scatter: number, had: number): number {
  for (let pairs = Math.max(2, Math.ceil(had / FASTEST)); pairs * FASTEST <= MOST_LAPS; pairs++) {
    const laps = pairs * FASTEST;
    const enough = studentT(CHANCE, pairs - 1) + studentT(2 * MOSTLY - 1, pairs - 1);
    if (difference > scatter * Math.sqrt(2 / laps) * enough)
      return Math.max(FASTEST, laps - Math.floor(had));
  }
  return Infinity;
}

import { Refusal } from "../refusal.js";
import { shareWithinT, studentT } from "../tails.js";
import { type Circle, type CircleLimit, circleLimit, LIMIT_LAPS } from "./circle.js";
import { inQuadrature } from "./measured.js";
import { fromRepeats } from "./repeats.js";

/** The runs of two set-ups on one circle, s of the clean laps of each. */
export interface TwoSetUps {
  /** In the order in which they were driven. */
  readonly before: readonly (readonly number[])[];
  /** The first of these was driven next to the first of those, and so on. */
  readonly after: readonly (readonly number[])[];
}

/** What a change did on the circle, and whether that was measured. */
export interface CircleDifference {
  /** m/s², above 0 where the car turns harder after it */
  readonly value: number;
  /** m/s² to each side within which the truth lies nine times in ten */
  readonly within: number;
  /** Whether each run was held against the one next to it, so that what drifts evenly drops out. */
  readonly paired: boolean;
  /** Whether it is there: 0 lies outside of where the truth is nineteen times in twenty. */
  readonly measured: boolean;
  /** How often chance alone makes a difference so large, 0–1. */
  readonly byChance: number;
  /**
   * Laps more of each set-up, in runs of three beside each other, until a difference as large as this
   * would be measured four times in five; 0 where it is; Infinity for more than 200
   */
  readonly lapsMore: number;
}

const CHANCE = 0.95;
const MOSTLY = 0.8; // how often the laps that are asked for would show it
const MOST_LAPS = 200;

/**
 * What a change did to the limit on a circle.
 *
 * From two runs of each on, every run is held against the one beside it: whatever drifts evenly in
 * the day is in both. Of one run each, laps are held against laps, and a drift would count as the
 * change. The scatter is never taken to be less than the stopwatch's, and the radius drops out but for
 * its share of the difference.
 *
 * @throws Refusal unless both have a run, of two clean laps where there is one each
 */
export function circleDifference(circle: Circle, runs: TwoSetUps): CircleDifference {
  const limitsOf = (laps: TwoSetUps["before"]) => laps.map((run) => circleLimit(circle, run));
  const [before, after] = [limitsOf(runs.before), limitsOf(runs.after)];
  const pairs = Math.min(before.length, after.length);
  if (pairs === 0) throw new Refusal("no-samples", "both set-ups need a run.");
  const { value, spread, freedom } =
    pairs >= 2 ? byPairs(before, after, pairs) : byLaps(before, after);
  const measured = Math.abs(value) > spread * studentT(CHANCE, freedom);
  const laps = [...before, ...after].reduce((sum, limit) => sum + limit.laps, 0) / 2;
  return {
    value,
    within: spread * studentT(0.9, freedom),
    paired: pairs >= 2,
    measured,
    byChance: 1 - shareWithinT(Math.abs(value) / spread, freedom),
    lapsMore: measured ? 0 : lapsUntil(Math.abs(value), spread * Math.sqrt(laps / 2), laps),
  };
}

interface Differs {
  readonly value: number;
  /** standard deviation of that mean */
  readonly spread: number;
  readonly freedom: number;
}

type Limits = readonly CircleLimit[];

function byPairs(before: Limits, after: Limits, pairs: number): Differs {
  const used = [before, after].map((limits) => limits.slice(0, pairs));
  const differences = before.slice(0, pairs).map((one, i) => (after[i]?.value ?? 0) - one.value);
  const { value, scatter = 0 } = fromRepeats({ values: differences, tool: 0 });
  const byStopwatch = inQuadrature(...used.flat().map((limit) => limit.byStopwatch)) / pairs;
  return { value, spread: Math.max(scatter / Math.sqrt(pairs), byStopwatch), freedom: pairs - 1 };
}

function byLaps([before]: Limits, [after]: Limits): Differs {
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
function lapsUntil(difference: number, scatter: number, had: number): number {
  for (
    let pairs = Math.max(2, Math.ceil(had / LIMIT_LAPS));
    pairs * LIMIT_LAPS <= MOST_LAPS;
    pairs++
  ) {
    const laps = pairs * LIMIT_LAPS;
    const enough = studentT(CHANCE, pairs - 1) + studentT(2 * MOSTLY - 1, pairs - 1);
    if (difference > scatter * Math.sqrt(2 / laps) * enough)
      return Math.max(LIMIT_LAPS, laps - Math.floor(had));
  }
  return Infinity;
}

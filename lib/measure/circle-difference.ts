import { type Circle, circleLimit } from "./circle.js";
import { type Difference, differenceOfRuns } from "./difference.js";

/** The runs of two set-ups, s of the clean laps of each. */
export interface TwoSetUps {
  /** In the order in which they were driven. */
  readonly before: readonly (readonly number[])[];
  /** The first of these was driven next to the first of those, and so on. */
  readonly after: readonly (readonly number[])[];
}

/**
 * What a change did to the limit on a circle, m/s², above 0 where the car turns harder after it.
 *
 * The scatter is never taken to be less than the stopwatch's, and the radius drops out but for its
 * share of the difference.
 *
 * @throws Refusal unless both have a run, of two clean laps where there is one each
 * @example
 * const circle = { radius: { value: 20, spread: 0.1 }, stopwatch: 0.1 };
 * circleDifference(circle, { before: [[10, 10]], after: [[10, 10]] }).value // → 0, nothing was changed
 */
export function circleDifference(circle: Circle, { before, after }: TwoSetUps): Difference {
  const limitsOf = (runs: TwoSetUps["before"]) => runs.map((laps) => circleLimit(circle, laps));
  return differenceOfRuns(limitsOf(before), limitsOf(after));
}

import type { Car } from "../../car/car.js";
import { adjusterOf } from "../../change/adjuster.js";
import { canApply } from "../../change/apply.js";
import type { Change } from "../../change/change.js";

/** Counts that a hand remembers: every step at first, then round numbers. */
const roundCounts = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200];

/** Share of an adjuster's range that a single change may take – common practice, no source. */
const LARGEST_SHARE = 0.5;

/**
 * How many steps a single change may take from where a car is set: round counts, up to half of
 * what can be set; one step in any case.
 *
 * @param one - the change by one step
 * @param largestShare - of what can be set, that a change may take
 */
export function stepCountsFor(car: Car, one: Change, largestShare = LARGEST_SHARE): number[] {
  const adjuster = adjusterOf(car, one);
  if (adjuster === undefined) return [];
  const largest = largestShare * (adjuster.max - adjuster.min) * (1 + 1e-9);
  return roundCounts.filter(
    (count) =>
      (count === 1 || count * adjuster.step <= largest) && canApply(car, timesSteps(one, count)),
  );
}

/** The change made so many times over. */
export function timesSteps(one: Change, count: number): Change {
  return { ...one, by: one.by * count };
}

/**
 * Tries more and more steps until an attempt is final. The largest is tried second: when even that
 * falls short, those between are not worth trying. Below a count that falls short all others are
 * taken to do so too.
 *
 * @returns the final attempt, or the last one; nothing when there is no count
 */
export function tryCounts<T>(
  [least, ...more]: readonly number[],
  attempt: (count: number) => T,
  isFinal: (attempt: T) => boolean,
  fallsShort: (attempt: T) => boolean,
): T | undefined {
  if (least === undefined) return undefined;
  const first = attempt(least);
  const most = more.pop();
  if (isFinal(first) || most === undefined) return first;
  const last = attempt(most);
  if (fallsShort(last)) return last;
  let [from, to] = [0, more.length];
  const tried = new Map<number, T>();
  while (from < to) {
    const half = Math.floor((from + to) / 2);
    const between = attempt(more[half] as number);
    tried.set(half, between);
    if (fallsShort(between)) from = half + 1;
    else to = half;
  }
  for (let i = from; i < more.length; i++) {
    const between = tried.get(i) ?? attempt(more[i] as number);
    if (isFinal(between)) return between;
  }
  return last;
}

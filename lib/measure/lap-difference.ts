import { requireInRange } from "../check.js";
import { Refusal } from "../refusal.js";
import type { TwoSetUps } from "./circle-difference.js";
import { type Difference, differenceOfRuns, FASTEST, type RunMean } from "./difference.js";
import { fromRepeats } from "./repeats.js";

/**
 * What a change did to the lap time, s, below 0 where the car is faster after it: the three fastest
 * laps of each run, run beside run of the same driver.
 *
 * A lap time is the driver's and the traffic's before it is the car's.
 *
 * @param stopwatch - s, standard uncertainty of one lap, above 0
 * @throws Refusal unless both have a run, of two laps where there is one each
 */
export function lapTimeDifference({ before, after }: TwoSetUps, stopwatch: number): Difference {
  const timesOf = (runs: TwoSetUps["before"]) => runs.map((laps) => lapTimeOf(laps, stopwatch));
  return differenceOfRuns(timesOf(before), timesOf(after));
}

/**
 * The lap time of a run, s: the mean of its three fastest laps.
 *
 * @param stopwatch - s, standard uncertainty of one lap, above 0
 * @throws Refusal without laps
 * @example
 * lapTimeOf([81, 80, 84, 82], 0.1).value // → 81, by hand: the mean of 80, 81 and 82
 */
export function lapTimeOf(times: readonly number[], stopwatch: number): RunMean {
  requireInRange("spread of the stopwatch", stopwatch, 1e-3, 5, "s");
  if (times.length === 0) throw new Refusal("no-samples", "at least one clean lap is needed.");
  const fastest = [...times].sort((a, b) => a - b).slice(0, FASTEST);
  const { value, scatter = 0, count } = fromRepeats({ values: fastest, tool: 0 });
  return {
    value,
    laps: count,
    scatter: Math.max(scatter, stopwatch),
    byStopwatch: stopwatch / Math.sqrt(count),
  };
}

import { Refusal } from "../refusal.js";
import { shareWithinT, studentT } from "../tails.js";
import { CHANCE, type Changed, type Difference, lapsUntil, type RunMean } from "./difference.js";
import { leastSquares } from "./least-squares.js";

/** A run in the order of a day, and with which of two set-ups. */
export interface PlacedRun extends RunMean {
  /** Anything that tells drivers apart. */
  readonly driver: string;
  /** Its number in the day: what drifts does so by as much from each run to the next. */
  readonly run: number;
  /** Whether it was driven with the set-up that is tested. */
  readonly tested: boolean;
}

/** What differs between two set-ups, and what drifted beside it. */
export interface FreedOfDrift extends Difference {
  /** SI from one run to the next, which is taken off: tyres, fuel, road. */
  readonly drift: Changed;
}

/**
 * What differs between two set-ups where somebody went back: a driver who drove the one, the other,
 * and the one again tells the change from an even drift. Least squares over all runs of both, with a
 * level of each driver, one drift of the car, and the change.
 *
 * How far off it is follows from how runs scatter about that, and where there are no more runs than
 * numbers, from how laps scatter within their runs; never less than the stopwatch.
 *
 * @throws Refusal where nobody went back, or each run has one lap and nothing tells how they scatter
 * @see Montgomery, Design and Analysis of Experiments, ch. 15.3 (analysis of covariance), from memory
 * @example
 * const laps = { driver: "Ada", laps: 3, scatter: 0.1, byStopwatch: 0.05 };
 * const [base, other, again] = [80, 80.1, 81].map((value, i) => ({ ...laps, run: i + 1, tested: i === 1, value }));
 * backToBase([base, other, again]).value // → -0.4, by hand: 80.1 less the middle of 80 and 81
 */
export function backToBase(runs: readonly PlacedRun[]): FreedOfDrift {
  const drivers = [...new Set(runs.map(({ driver }) => driver))];
  if (!drivers.some((driver) => wentBack(runs.filter((run) => run.driver === driver))))
    throw new Refusal(
      "too-few-samples",
      "Nobody drove one set-up, the other, and the first one again.",
    );
  const design = runs.map(({ driver, run, tested }) => [
    ...drivers.map((one) => Number(one === driver)),
    run,
    Number(tested),
  ]);
  const fit = leastSquares(
    design,
    runs.map(({ value, laps }) => ({ value, spread: 1 / Math.sqrt(laps) })),
  );
  const { ofLap, freedom } = scatterOf(runs, fit);
  const [drift, change] = fit.found
    .slice(-2)
    .map(({ value, spread }) => ({ value, spread: spread * ofLap }));
  if (!drift || !change) throw new Error("a fit has its numbers");
  const laps = runs.reduce((sum, run) => sum + run.laps, 0) / 2;
  const told = changedBy(change, freedom);
  const scatter = change.spread * Math.sqrt(laps / 2);
  return {
    ...told,
    paired: true,
    lapsMore: told.measured ? 0 : lapsUntil(Math.abs(told.value), scatter, laps),
    drift: changedBy(drift, freedom),
  };
}

/** Whether a run with one set-up lies between two with the other. */
function wentBack(runs: readonly PlacedRun[]): boolean {
  const inOrder = [...runs].sort((a, b) => a.run - b.run);
  const turns = inOrder.filter(({ tested }, i) => i > 0 && inOrder[i - 1]?.tested !== tested);
  return turns.length > 1;
}

/** Standard deviation of a lap, as runs tell it, or laps where runs cannot, and degrees of freedom. */
function scatterOf(runs: readonly PlacedRun[], fit: { chiSquare: number; freedom: number }) {
  const watch = Math.max(...runs.map(({ byStopwatch, laps }) => byStopwatch * Math.sqrt(laps)));
  if (fit.freedom > 0) {
    const ofRuns = Math.sqrt(fit.chiSquare / fit.freedom);
    return { ofLap: Math.max(ofRuns, watch), freedom: fit.freedom };
  }
  const freedom = runs.reduce((sum, { laps }) => sum + laps - 1, 0);
  if (freedom < 1)
    throw new Refusal("too-few-samples", "one run each needs two clean laps at least.");
  const squares = runs.reduce((sum, { laps, scatter }) => sum + (laps - 1) * scatter ** 2, 0);
  return { ofLap: Math.max(Math.sqrt(squares / freedom), watch), freedom };
}

const changedBy = (one: { value: number; spread: number }, freedom: number): Changed => ({
  value: one.value,
  within: one.spread * studentT(0.9, freedom),
  measured: Math.abs(one.value) > one.spread * studentT(CHANCE, freedom),
  byChance: 1 - shareWithinT(Math.abs(one.value) / one.spread, freedom),
});

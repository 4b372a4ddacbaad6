import type { Car } from "../car/car.js";
import type { UncertainNumber } from "../certainty/uncertain-number.js";
import { uncertainNumbersOf } from "../certainty/uncertain-numbers.js";
import { type Matrix, solveLinear } from "../linear.js";
import { orUndefined, Refusal } from "../refusal.js";
import { chiSquareAbove } from "../tails.js";
import { SELDOM } from "./least-squares.js";
import type { Measured } from "./measured.js";

/** Something that was read off a car, and what the model says of the same. */
export interface Observation {
  readonly id: string;
  /** Spread above 0. */
  readonly measured: Measured;
  /** Of any car that may be the one; in the unit of the reading. */
  readonly of: (car: Car) => number;
}

/** A number of the car before and after the readings. */
export interface LearnedNumber {
  /** Its place in the car file, or the name of what several places share. */
  readonly path: string;
  readonly before: Measured;
  readonly after: Measured;
  /** Which readings moved or narrowed it, the most first, with their shares. */
  readonly because: readonly { readonly id: string; readonly share: number }[];
}

/** What readings say of the numbers of a car. */
export interface Learned {
  /** Those that became surer or moved, the most narrowed first. */
  readonly numbers: readonly LearnedNumber[];
  /** What the model said of each reading before, and says after. */
  readonly told: readonly {
    readonly id: string;
    readonly before: number;
    readonly after: number;
  }[];
  /** How often readings and estimates differ so much by chance alone, 0–1. */
  readonly byChance: number;
  /** The reading without which all goes together; nothing where it does, or none is it. */
  readonly odd?: string;
}

const ROUNDS = 3;
const STEP = 0.5; // standard deviations, for slopes
const FARTHEST = 3.5; // standard deviations from what was held true
const NOTICED = { variance: 0.9, moved: 0.3 };

/**
 * What readings say of uncertain numbers, with a pause after each car that was worked out: the most
 * probable numbers given both, each normally distributed about what the file has, held inside its
 * range; and how far each may be off then.
 *
 * The model is taken as straight about the most probable car, which is found in three rounds. What
 * the file has is what was known before: readings that are in it already must not be given again.
 *
 * @throws Refusal without readings, where a spread is not above 0, or where the car of the file cannot
 * do what a reading is of
 * @see Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, ch. 14.8 (normal prior as added readings)
 */
export function* learning(
  car: Car,
  observations: readonly Observation[],
  numbers: readonly UncertainNumber[] = uncertainNumbersOf(car),
): Generator<void, Learned> {
  if (observations.length === 0 || observations.some(({ measured }) => !(measured.spread > 0)))
    throw new Refusal("no-samples", "at least one reading with a spread is needed.");
  for (const { of } of observations) of(car); // a refusal of the file's own car is the reader's to see
  const start = numbers.map(() => 0);
  const before = predictedBy(car, numbers, observations, start);
  let at = start;
  let line = yield* slopesAt(car, numbers, observations, at);
  for (let round = 1; round <= ROUNDS; round++) {
    at = mostProbable(line, observations, numbers);
    if (round < ROUNDS) line = yield* slopesAt(car, numbers, observations, at);
  }
  const after = predictedBy(car, numbers, observations, at);
  const told = observations.map(({ id }, j) => ({
    id,
    before: before[j] ?? 0,
    after: after[j] ?? 0,
  }));
  return {
    numbers: numbersTold(line, observations, numbers, at),
    told,
    ...misfit(line, observations),
  };
}

/** The same at once. */
export function learnt(...asked: Parameters<typeof learning>): Learned {
  const work = learning(...asked);
  for (let step = work.next(); ; step = work.next()) if (step.done) return step.value;
}

type Deviations = readonly number[];

/** The model as a straight line about a car: reading = at the middle + slopes · deviations. */
interface Line {
  /** Row for each reading, by number. */
  readonly slopes: readonly (readonly number[])[];
  /** Of each reading with no number off. */
  readonly middle: readonly number[];
}

function carAt(car: Car, numbers: readonly UncertainNumber[], at: Deviations): Car {
  return numbers.reduce((off, { set, value, spread, min, max }, i) => {
    const by = at[i] ?? 0;
    return by === 0 ? off : set(off, Math.min(max, Math.max(min, value + by * spread)));
  }, car);
}

const predictedBy = (
  car: Car,
  numbers: readonly UncertainNumber[],
  observations: readonly Observation[],
  at: Deviations,
): (number | undefined)[] => {
  const off = carAt(car, numbers, at);
  return observations.map(({ of }) => orUndefined(() => of(off)));
};

/** Slopes about a car by half a standard deviation to each side; none where a car there cannot be. */
function* slopesAt(
  car: Car,
  numbers: readonly UncertainNumber[],
  observations: readonly Observation[],
  at: Deviations,
): Generator<void, Line> {
  const here = predictedBy(car, numbers, observations, at);
  const columns: number[][] = [];
  for (const i of numbers.keys()) {
    const moved = (by: number) => at.map((one, k) => (k === i ? one + by : one));
    const [up, down] = [STEP, -STEP].map((by) =>
      predictedBy(car, numbers, observations, moved(by)),
    );
    columns.push(
      observations.map((_, j) => {
        const [high, low] = [up?.[j], down?.[j]];
        return high === undefined || low === undefined ? 0 : (high - low) / (2 * STEP);
      }),
    );
    yield;
  }
  const slopes = observations.map((_, j) => columns.map((column) => column[j] ?? 0));
  const middle = slopes.map((row, j) => (here[j] ?? 0) - dot(row, at));
  return { slopes, middle };
}

const dot = (a: Deviations, b: Deviations) => a.reduce((sum, one, i) => sum + one * (b[i] ?? 0), 0);

/** Covariance of readings before they were made: slopes of all numbers, and their own spreads. */
const expected = ({ slopes }: Line, observations: readonly Observation[]): Matrix =>
  slopes.map((row, i) =>
    slopes.map((other, j) => {
      const own = i === j ? (observations[i]?.measured.spread ?? 0) ** 2 : 0;
      return dot(row, other) + own;
    }),
  );

const surprises = ({ middle }: Line, observations: readonly Observation[]): number[] =>
  observations.map(({ measured }, j) => measured.value - (middle[j] ?? 0));

/** Deviations that both the readings and what was known before make most probable. */
function mostProbable(
  line: Line,
  observations: readonly Observation[],
  numbers: readonly UncertainNumber[],
): number[] {
  const pulls = solveLinear(expected(line, observations), surprises(line, observations));
  return numbers.map(({ value, spread, min, max }, i) => {
    const by = line.slopes.reduce((sum, row, j) => sum + (row[i] ?? 0) * (pulls[j] ?? 0), 0);
    const held = Math.min(FARTHEST, Math.max(-FARTHEST, by));
    return (Math.min(max, Math.max(min, value + held * spread)) - value) / spread;
  });
}

function numbersTold(
  line: Line,
  observations: readonly Observation[],
  numbers: readonly UncertainNumber[],
  at: Deviations,
): LearnedNumber[] {
  const covariance = expected(line, observations);
  const told = numbers.map(({ path, value, spread }, i) => {
    const slopes = line.slopes.map((row) => row[i] ?? 0);
    const variance = Math.max(0, 1 - dot(slopes, solveLinear(covariance, slopes)));
    const moved = at[i] ?? 0;
    const after = { value: value + moved * spread, spread: spread * Math.sqrt(variance) };
    const because = reasons(slopes, covariance, observations);
    return { path, before: { value, spread }, after, because, variance, moved };
  });
  return told
    .filter(({ variance, moved }) => variance < NOTICED.variance || Math.abs(moved) > NOTICED.moved)
    .sort((a, b) => a.variance - b.variance)
    .map(({ variance: _, moved: __, ...number }) => number);
}

/** What each reading by itself would have narrowed, as shares. */
function reasons(slopes: Deviations, covariance: Matrix, observations: readonly Observation[]) {
  const alone = slopes.map((slope, j) => slope ** 2 / (covariance[j]?.[j] ?? 1));
  const all = alone.reduce((sum, one) => sum + one, 0);
  return observations
    .map(({ id }, j) => ({ id, share: all === 0 ? 0 : (alone[j] ?? 0) / all }))
    .filter(({ share }) => share > 0.1)
    .sort((a, b) => b.share - a.share);
}

/** Whether readings go with each other and with what was known before. */
function misfit(
  line: Line,
  observations: readonly Observation[],
): Pick<Learned, "byChance" | "odd"> {
  const covariance = expected(line, observations);
  const surprise = surprises(line, observations);
  const chance = (kept: readonly number[]): number => {
    const part = kept.map((i) => kept.map((j) => covariance[i]?.[j] ?? 0));
    const off = kept.map((i) => surprise[i] ?? 0);
    return chiSquareAbove(dot(off, solveLinear(part, off)), kept.length);
  };
  const all = observations.map((_, j) => j);
  const byChance = chance(all);
  if (byChance >= SELDOM || all.length < 2) return { byChance };
  const without = all.map((one) => chance(all.filter((j) => j !== one)));
  const best = Math.max(...without);
  const odd = best < SELDOM ? undefined : observations[without.indexOf(best)]?.id;
  return odd === undefined ? { byChance } : { byChance, odd };
}

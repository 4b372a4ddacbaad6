import type { Adjuster, Car } from "../car/car.js";
import { standingFaultsOf } from "../car/file/consistency.js";
import { shapeAt } from "../car/file/place.js";
import { normalFrom, randomFrom, seedFrom } from "../random.js";
import { reflected, type UncertainNumber } from "./uncertain-number.js";

/** One way in which a car may really be. */
export interface CarSample {
  /** How far each number is off, in standard deviations, in the order of the numbers. */
  readonly deviations: readonly number[];
  /**
   * A car with its numbers off so: the one the numbers are of, or that car with changes made. Its
   * adjusters reach further, so that the same changes can be made on it.
   */
  readonly of: (car: Car) => Car;
}

/**
 * A car with its numbers off at random, as far as each may be: the k-th one, for the same seed always
 * the same, whatever came before.
 *
 * Each number is normally distributed about its value and reflected at the ends of its range. Samples
 * come in pairs, one off as far one way as the other is the other way. What would make a car that
 * cannot stand is halved until it can.
 *
 * @param car - the car that the numbers are of
 * @param k - 0, 1, 2, …
 * @example
 * const numbers = uncertainNumbersOf(demoCar);
 * const [one, other] = [0, 1].map((k) => sampleOf(demoCar, numbers, 1, k).deviations[0]);
 * one + other // → 0, a pair is off both ways alike
 */
export function sampleOf(
  car: Car,
  numbers: readonly UncertainNumber[],
  seed: number,
  k: number,
): CarSample {
  const sign = k % 2 === 0 ? 1 : -1;
  const pair = Math.floor(k / 2);
  const drawn = numbers.map(({ path }) => sign * deviationOf(path, seed, pair));
  for (let share = 1; share > 1e-3; share /= 2) {
    const deviations = drawn.map((deviation) => deviation * share);
    const sample = offBy(numbers, deviations);
    if (standingFaultsOf(sample.of(car)).length === 0) return sample;
  }
  const none = drawn.map(() => 0);
  return offBy(numbers, none);
}

/** How far a number is off in a pair of samples: each number draws for itself, so a new one moves no other. */
function deviationOf(path: string, seed: number, pair: number): number {
  const random = randomFrom(seedFrom(`${pair} ${seed} ${path}`));
  for (let i = 0; i < 4; i++) random(); // so that seeds that are near give numbers that are not
  return normalFrom(random);
}

function offBy(numbers: readonly UncertainNumber[], deviations: readonly number[]): CarSample {
  const offsets = numbers.map(({ value, spread, min, max }, i) => {
    const off = value + spread * (deviations[i] ?? 0);
    return reflected(off, min, max) - value;
  });
  const of = (car: Car) =>
    numbers.reduce((off, { get, set, min, max }, i) => {
      const offset = offsets[i] ?? 0;
      return offset === 0 ? off : set(off, reflected(get(off) + offset, min, max));
    }, withWideAdjusters(car));
  return { deviations, of };
}

/** The car with every adjuster reaching twice as far, inside what the file may hold. */
function withWideAdjusters(car: Car): Car {
  return {
    ...car,
    ...(car.adjusters && { adjusters: wide(car.adjusters, "adjusters") }),
    front: { ...car.front, ...wideAtAxle(car, "front") },
    rear: { ...car.rear, ...wideAtAxle(car, "rear") },
  };
}

function wideAtAxle(car: Car, end: "front" | "rear") {
  const { adjusters } = car[end];
  return adjusters && { adjusters: wide(adjusters, `${end}.adjusters`) };
}

function wide<T extends Readonly<Record<string, Adjuster>> | object>(
  adjusters: T,
  path: string,
): T {
  const entries = Object.entries(adjusters).map(([lever, adjuster]: [string, Adjuster]) => {
    const shape = shapeAt(`${path}.${lever}.min`);
    if (shape?.type !== "number") return [lever, adjuster];
    const { min, max, step } = adjuster;
    const more = Math.max(max - min, step);
    return [
      lever,
      { ...adjuster, min: Math.max(shape.min, min - more), max: Math.min(shape.max, max + more) },
    ];
  });
  return Object.fromEntries(entries) as T;
}

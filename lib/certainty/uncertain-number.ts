import type { Car, Source } from "../car/car.js";

/** A number of a car that may be off, and how it is changed. */
export interface UncertainNumber {
  /** Its place in the car file, or the name of what several places share, such as "pressureGauge". */
  readonly path: string;
  /** SI */
  readonly value: number;
  /** One standard deviation in SI, above 0. */
  readonly spread: number;
  readonly how: Source;
  /** The range in which it is held. */
  readonly min: number;
  readonly max: number;
  readonly get: (car: Car) => number;
  /** The car with another value, everything else as it was. */
  readonly set: (car: Car, value: number) => Car;
}

/**
 * A value inside a range: what would lie beyond an end is reflected at it, so that no value piles up
 * there; and held at the other end where it would then lie beyond that.
 */
export function reflected(value: number, min: number, max: number): number {
  const inside = value < min ? 2 * min - value : value > max ? 2 * max - value : value;
  return Math.min(max, Math.max(min, inside));
}

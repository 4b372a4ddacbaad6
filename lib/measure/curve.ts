import { type LeastSquares, leastSquares, widened } from "./least-squares.js";
import type { Measured } from "./measured.js";

/** A place where something was read, and what. */
export interface ReadAt {
  readonly at: number;
  readonly read: Measured;
}

/** The polynomial that readings lie on best, and how well. */
export interface Curve extends LeastSquares {
  /** From the constant up. */
  readonly found: readonly Measured[];
}

/**
 * The polynomial that goes through readings best, by least squares weighted with their spreads;
 * widened where they scatter more than that.
 *
 * @param degree - 0 for a mean, 1 for a straight line, and so on
 * @throws Refusal for fewer readings than it has numbers, or too few different places
 * @example
 * const on = (at, value) => ({ at, read: { value, spread: 1 } });
 * curveThrough([on(0, 1), on(1, 3), on(2, 5)], 1).found[1].value // → 2.0, by hand: 1 + 2x
 */
export function curveThrough(readings: readonly ReadAt[], degree: number): Curve {
  const rows = readings.map(({ at }) =>
    Array.from({ length: degree + 1 }, (_, power) => at ** power),
  );
  return widened(
    leastSquares(
      rows,
      readings.map(({ read }) => read),
    ),
  );
}

import fc from "fast-check";

const STEPS = 1_000_000;

/**
 * Numbers spread evenly over a range, both ends included.
 *
 * fast-check's own doubles are spread over exponents: nearly all of them lie close to zero.
 */
export function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: STEPS }).map((i) => min + ((max - min) * i) / STEPS);
}

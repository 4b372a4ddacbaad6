import { Refusal } from "./refusal.js";

const MOST_ITERATIONS = 200;

/**
 * Finds where a function crosses zero between two points on opposite sides of it.
 *
 * Inverse quadratic interpolation where it is trustworthy, bisection where it is not: as safe as
 * bisection, and a handful of calls on smooth functions.
 *
 * @param f - continuous function of one number
 * @param low - one end of the bracket
 * @param high - other end of the bracket
 * @param tolerance - how far the answer may be from the crossing, in the unit of the bracket
 * @returns a point where f is zero within the tolerance
 * @throws Refusal when f has the same sign at both ends, or is not a number there
 * @see Chandrupatla 1997, Advances in Engineering Software 28, 145–149
 * @example
 * findRoot((x) => x * x - 2, 0, 2) // → 1.414213562, by hand: √2
 */
export function findRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance = 1e-12,
): number {
  let [a, b] = [low, high]; // newest point, and the point on the other side of the crossing
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (Math.sign(fa) !== -Math.sign(fb))
    throw new Refusal("no-crossing", noBracket(low, high, fa, fb));
  let share = 0.5; // where to look next, as a share of the way from a to b
  for (let i = 0; i < MOST_ITERATIONS; i++) {
    const x = a + share * (b - a);
    const fx = f(x);
    let [c, fc] = [a, fa]; // the point before, for the curvature
    if (Math.sign(fx) !== Math.sign(fa)) {
      [c, fc] = [b, fb];
      [b, fb] = [a, fa];
    }
    [a, fa] = [x, fx];
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const least = (2 * Number.EPSILON * Math.abs(best) + tolerance / 2) / Math.abs(b - a);
    if (fa === 0 || least > 0.5) return best;
    share = Math.min(1 - least, Math.max(least, nextShare(a, b, c, fa, fb, fc)));
  }
  throw new Refusal("no-crossing", `No crossing was settled between ${low} and ${high}.`);
}

/** Inverse quadratic step if the three points bend little enough, else half – Chandrupatla 1997. */
function nextShare(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  if (phi ** 2 >= xi || (1 - phi) ** 2 >= 1 - xi) return 0.5;
  return (
    ((fa / (fb - fa)) * fc) / (fb - fc) +
    ((((c - a) / (b - a)) * fa) / (fc - fa)) * (fb / (fc - fb))
  );
}

/**
 * Finds the highest point of a function with one peak between two points, by golden section.
 *
 * @param f - function of one number, rising and then falling between low and high
 * @param low - lower end of the search
 * @param high - upper end of the search
 * @param tolerance - width at which to stop, in the unit of the search
 * @returns where the peak is, and how high
 * @see Kiefer 1953, Proc. AMS 4, 502–506
 */
export function findPeak(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance = 1e-9,
): { at: number; value: number } {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [low, high];
  let [left, right] = [b - golden * (b - a), a + golden * (b - a)];
  let [fLeft, fRight] = [f(left), f(right)];
  while (b - a > tolerance) {
    if (fLeft > fRight) {
      [b, right, fRight] = [right, left, fLeft];
      left = b - golden * (b - a);
      fLeft = f(left);
    } else {
      [a, left, fLeft] = [left, right, fRight];
      right = a + golden * (b - a);
      fRight = f(right);
    }
  }
  const at = (a + b) / 2;
  return { at, value: f(at) };
}

function noBracket(low: number, high: number, atLow: number, atHigh: number): string {
  return `The function must change sign between ${low} and ${high} but is ${atLow} and ${atHigh} there.`;
}

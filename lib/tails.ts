import { requireInRange } from "./check.js";
import { shareBelow } from "./normal.js";
import { Refusal } from "./refusal.js";
import { findRoot } from "./solve.js";

function requireFreedom(freedom: number): number {
  if (!Number.isInteger(freedom))
    throw new Refusal("not-whole", "degrees of freedom must be a whole number.");
  return requireInRange("degrees of freedom", freedom, 1, 1e4);
}

/**
 * Share of Student's t distribution that lies within ±t of its middle, 0–1.
 *
 * @param t - at least 0
 * @param freedom - degrees of freedom, a whole number, 1–10 000
 * @throws Refusal when a number is out of its range
 * @see Abramowitz and Stegun 1964, eqs 26.7.3 and 26.7.4
 * @example
 * shareWithinT(2.571, 5) // → 0.950, from memory: t = 2.571 in any table
 */
export function shareWithinT(t: number, freedom: number): number {
  requireInRange("t", t, 0, Infinity);
  requireFreedom(freedom);
  const angle = Math.atan(t / Math.sqrt(freedom));
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  const odd = freedom % 2;
  let [sum, term] = [0, odd ? cosine : 1];
  for (let i = odd + 2; i <= freedom; i += 2) {
    sum += term;
    term *= ((i - 1) / i) * cosine ** 2; // 1 + ½·cos² + (1·3)/(2·4)·cos⁴ + …
  }
  return odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
}

/**
 * How many spreads of a mean reach so far that the truth lies within with a given chance, when the
 * spread itself is known from few readings: Student's t.
 *
 * @param share - inside, both ends together, 0–0.9999
 * @param freedom - degrees of freedom: readings less numbers found from them
 * @throws Refusal when a number is out of its range
 * @example
 * studentT(0.9, 3) // → 2.353, from memory: t of 3 degrees of freedom, 5 % beyond each end
 */
export function studentT(share: number, freedom: number): number {
  requireInRange("share", share, 0, 0.9999);
  if (share === 0) return 0;
  return findRoot((t) => shareWithinT(t, freedom) - share, 0, 1e4);
}

/**
 * Share of the chi-square distribution that lies above a sum of squares, 0–1: how often chance alone
 * makes a misfit so large.
 *
 * @param square - at least 0
 * @param freedom - degrees of freedom, a whole number, 1–10 000
 * @throws Refusal when a number is out of its range
 * @see Abramowitz and Stegun 1964, eqs 26.4.4 and 26.4.5
 * @example
 * chiSquareAbove(3.841, 1) // → 0.0500, from memory: the table's value for 5 %
 */
export function chiSquareAbove(square: number, freedom: number): number {
  requireInRange("sum of squares", square, 0, Infinity);
  requireFreedom(freedom);
  if (square > 1400) return 0; // less than the smallest number there is
  const odd = freedom % 2;
  const root = Math.sqrt(square);
  const height = odd
    ? Math.exp(-square / 2) * Math.sqrt(2 / Math.PI) * root
    : Math.exp(-square / 2);
  let [sum, term] = [0, height];
  for (let i = odd + 2; i <= freedom; i += 2) {
    sum += term;
    term *= square / i; // e^(−x/2)·(1 + (x/2) + (x/2)²/2! + …), or the like over odd numbers
  }
  return Math.min(1, odd ? 2 * shareBelow(-root) + sum : sum);
}

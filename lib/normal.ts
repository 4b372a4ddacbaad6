import { Refusal } from "./refusal.js";

const ALL = 9; // deviations beyond which nothing is left, to the last digit

/**
 * Share of a normal distribution that lies below so many standard deviations from its middle, 0–1.
 *
 * @param deviations - above 0 on the upper side
 * @see Marsaglia 2004, Journal of Statistical Software 11(4), "Evaluating the Normal Distribution"
 */
export function shareBelow(deviations: number): number {
  if (Number.isNaN(deviations)) throw new Refusal("not-a-number", "deviations is not a number.");
  if (deviations < -ALL) return 0;
  if (deviations > ALL) return 1;
  const square = deviations ** 2;
  let [sum, term, before] = [deviations, deviations, 0];
  for (let i = 3; sum !== before; i += 2) {
    before = sum;
    term *= square / i; // x + x³/3 + x⁵/(3·5) + …
    sum += term;
  }
  const height = Math.exp(-square / 2) / Math.sqrt(2 * Math.PI);
  return Math.min(1, Math.max(0, 0.5 + sum * height));
}

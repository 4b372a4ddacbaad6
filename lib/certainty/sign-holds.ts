import { Refusal } from "../refusal.js";

/** How far a statement may be trusted: in how many samples it holds. */
export type HowSure = "sure" | "likely" | "cannot say";

/** In what share of the samples something holds. */
export interface Holds {
  /** 0–1 */
  readonly share: number;
  /** Between what, nine times in ten, the share lies of which so many samples were taken. */
  readonly from: number;
  readonly to: number;
  readonly verdict: HowSure;
  readonly count: number;
}

/** Share from which something is sure or likely, and above which it must be in spite of few samples. */
const SURE = { share: 0.95, surely: 0.9 };
const LIKELY = { share: 0.75, surely: 0.6 };

/**
 * How often the sign of a figure is that of its samples.
 *
 * @param still - up to this size a figure counts as 0, which has a sign of its own
 */
export function signHolds(figure: number, samples: readonly number[], still = 0): Holds {
  const signOf = (value: number) => (Math.abs(value) <= still ? 0 : Math.sign(value));
  const same = samples.filter((sample) => signOf(sample) === signOf(figure));
  return holds(same.length, samples.length);
}

/**
 * The verdict on something that holds in so many of all samples.
 *
 * @throws Refusal without samples
 */
export function holds(held: number, count: number): Holds {
  if (!(count >= 1)) throw new Refusal("out-of-range", `count is ${count} but must be at least 1.`);
  const share = held / count;
  const { from, to } = wilson(held, count);
  const passes = (bar: typeof SURE) => share >= bar.share && from >= bar.surely;
  const verdict = passes(SURE) ? "sure" : passes(LIKELY) ? "likely" : "cannot say";
  return { share, from, to, verdict, count };
}

/**
 * Between what a share lies, of which a sample was taken.
 *
 * @param deviations - of the normal distribution on each side; 1.645 for nine times in ten
 * @see Wilson 1927, Journal of the American Statistical Association 22, 209–212
 */
export function wilson(held: number, count: number, deviations = 1.644854) {
  const [share, square] = [held / count, deviations ** 2];
  const middle = (held + square / 2) / (count + square);
  const half =
    (deviations * Math.sqrt(count * share * (1 - share) + square / 4)) / (count + square);
  return { from: Math.max(0, middle - half), to: Math.min(1, middle + half) };
}

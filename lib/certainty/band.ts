import { Refusal } from "../refusal.js";

/** Where a figure may lie: a value of a band and its standard error, from the number of samples. */
export interface Quantile {
  readonly value: number;
  /** At least 0; the same unit. */
  readonly error: number;
}

/** Nine samples in ten lie between low and high, half of them below the middle. */
export interface Band {
  /** 5 % lie below. */
  readonly low: Quantile;
  readonly middle: Quantile;
  /** 95 % lie below. */
  readonly high: Quantile;
  readonly count: number;
}

/**
 * The band of some samples.
 *
 * The error of a quantile is how far the samples lie whose ranks are one standard deviation of the
 * binomial distribution away, the further of both, so that no distribution is assumed – David and
 * Nagaraja, Order Statistics, 3rd ed. 2003, ch. 7.1. Below 40 samples it is too small at the ends.
 *
 * @throws Refusal without samples, or when one is not a finite number
 */
export function bandOf(samples: readonly number[]): Band {
  if (samples.length === 0 || !samples.every(Number.isFinite))
    throw new Refusal("no-samples", "samples must be finite numbers, at least one.");
  const sorted = [...samples].sort((a, b) => a - b);
  return {
    low: quantile(sorted, 0.05),
    middle: quantile(sorted, 0.5),
    high: quantile(sorted, 0.95),
    count: sorted.length,
  };
}

function quantile(sorted: readonly number[], share: number): Quantile {
  const rank = share * (sorted.length - 1);
  const stray = Math.sqrt(sorted.length * share * (1 - share));
  const value = at(sorted, rank);
  const error = Math.max(value - at(sorted, rank - stray), at(sorted, rank + stray) - value);
  return { value, error };
}

/** The value at a rank, between two by proportion, beyond the ends that of the end. */
function at(sorted: readonly number[], rank: number): number {
  const held = Math.min(sorted.length - 1, Math.max(0, rank));
  const below = Math.floor(held);
  const [low = 0, high = low] = sorted.slice(below, below + 2);
  return low + (held - below) * (high - low);
}

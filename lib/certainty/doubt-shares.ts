/** What one number's doubt has to do with the width of a band. */
export interface DoubtShare {
  /** Place of the number, as in `UncertainNumber`. */
  readonly path: string;
  /** Share of the variance that is gone when this number is exact, 0–1, as far as it goes in proportion. */
  readonly share: number;
}

/**
 * Which numbers' doubts widen a band, the most first: the squared correlation of each with the
 * figure, less what chance makes of it. The samples that gave the band are enough; few of them
 * name few numbers, since no more than one list in twenty may name one that has nothing to do with it.
 *
 * @param deviations - of each sample, number by number
 * @param figures - of each sample
 * @param independent - how many of the samples are; half of them where they come in opposite pairs
 * @see Saltelli et al., Global Sensitivity Analysis: The Primer, 2008, ch. 1.2.5
 */
export function doubtShares(
  paths: readonly string[],
  deviations: readonly (readonly number[])[],
  figures: readonly number[],
  independent = figures.length,
): DoubtShare[] {
  const byChance = 2 * Math.log(20 * paths.length); // P(|Z| > z) ≤ exp(−z²/2), once in twenty for all
  const named = (squared: number) => squared * independent >= byChance;
  return squaresOf({ paths, deviations, figures, independent })
    .filter(({ squared }) => named(squared))
    .map(({ path, share }) => ({ path, share }))
    .sort((a, b) => b.share - a.share);
}

/** What a figure came to in samples, and by how much each number was off in them. */
export interface Sampled {
  readonly paths: readonly string[];
  /** Of each sample, number by number. */
  readonly deviations: readonly (readonly number[])[];
  /** Of each sample. */
  readonly figures: readonly number[];
  /** How many of the samples are; half of them where they come in opposite pairs. */
  readonly independent: number;
}

/**
 * The same of every number, also of those that chance may have put there: for sums over several, in
 * which chance evens out. One that has nothing to do with the figure is as often a little below 0.
 */
export const allShares = (sampled: Sampled): DoubtShare[] =>
  squaresOf(sampled).map(({ path, share }) => ({ path, share }));

/** The squared correlation of each number with the figure, and its share; none of fewer samples than four. */
function squaresOf({ paths, deviations, figures, independent }: Sampled) {
  if (independent < 4) return [];
  return paths.map((path, i) => {
    const column = deviations.map((sample) => sample[i] ?? 0);
    const squared = squaredCorrelation(column, figures);
    return { path, squared, share: 1 - ((1 - squared) * (independent - 1)) / (independent - 2) };
  });
}

/** The mean share of each number over several lists, one that is not in a list having none there. */
export function meanShares(lists: readonly (readonly DoubtShare[])[]): DoubtShare[] {
  const total = new Map<string, number>();
  for (const { path, share } of lists.flat())
    total.set(path, (total.get(path) ?? 0) + share / lists.length);
  return [...total].map(([path, share]) => ({ path, share })).sort((a, b) => b.share - a.share);
}

/** 0 without any spread. */
function squaredCorrelation(a: readonly number[], b: readonly number[]): number {
  const [offA, offB] = [offMean(a), offMean(b)];
  const product = dot(offA, offA) * dot(offB, offB);
  return product === 0 ? 0 : dot(offA, offB) ** 2 / product;
}

function offMean(values: readonly number[]): number[] {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.map((value) => value - mean);
}

const dot = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);

import { holds } from "./sign-holds.js";

/**
 * Things in order of merit, the best first, in groups of what cannot be told apart: all that are not
 * at least likely to be worse than the best of their group, sample by sample.
 *
 * @param merits - of each thing in the same samples, more is better; NaN where it has none
 * @returns places in `merits`, group by group
 */
export function rankGroups(merits: readonly (readonly number[])[]): number[][] {
  const order = merits
    .map((values, place) => ({ place, mean: meanOf(values) }))
    .filter(({ mean }) => Number.isFinite(mean))
    .sort((a, b) => b.mean - a.mean);
  const groups: number[][] = [];
  for (const { place } of order) {
    const group = groups.at(-1);
    const best = group?.[0];
    if (group === undefined || best === undefined || isWorse(merits[place], merits[best]))
      groups.push([place]);
    else group.push(place);
  }
  return groups;
}

function isWorse(one: readonly number[] = [], best: readonly number[] = []): boolean {
  const apart = one
    .map((merit, i) => (best[i] ?? Number.NaN) - merit)
    .filter((difference) => !Number.isNaN(difference));
  if (apart.length === 0) return false;
  const worse = apart.filter((difference) => difference > 0).length;
  return holds(worse, apart.length).verdict !== "cannot say";
}

/** Mean of the numbers among the values; NaN where there is none. */
function meanOf(values: readonly number[]): number {
  const numbers = values.filter((value) => !Number.isNaN(value));
  return numbers.reduce((sum, value) => sum + value, 0) / numbers.length;
}

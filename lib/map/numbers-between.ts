import type { Knots } from "./knots.js";

/** Numbers that are known at the knots of two axes, at any place between them. */
export type NumbersBetween = (x: number, y: number) => Float64Array;

/**
 * Blends lists of numbers between knots: first along y for a whole row, then along x.
 *
 * @param known - one list for each pair of knots, along x first; all of one length
 * @returns a function that writes into the same list at each call
 */
export function numbersBetween(
  along: Knots,
  up: Knots,
  known: readonly (readonly number[])[],
): NumbersBetween {
  const [columns, length] = [along.at.length, known[0]?.length ?? 0];
  const lists = known.map((list) => Float64Array.from(list));
  const above = along.at.map((_, i) => lists.filter((_, at) => at % columns === i));
  const row = along.at.map(() => new Float64Array(length));
  const [weightsAlong, weightsUp] = [new Float64Array(columns), new Float64Array(up.at.length)];
  const blended = new Float64Array(length);
  let rowAt = Number.NaN;
  return (x, y) => {
    if (y !== rowAt) {
      up.weigh(y, weightsUp);
      row.forEach((column, i) => {
        sum(above[i] ?? [], weightsUp, column);
      });
      rowAt = y;
    }
    along.weigh(x, weightsAlong);
    sum(row, weightsAlong, blended);
    return blended;
  };
}

function sum(lists: readonly Float64Array[], weights: Float64Array, into: Float64Array): void {
  into.fill(0);
  for (let i = 0; i < lists.length; i++) {
    const [list, weight] = [lists[i], weights[i] ?? 0];
    if (list === undefined || weight === 0) continue;
    for (let k = 0; k < into.length; k++) into[k] = (into[k] ?? 0) + weight * (list[k] ?? 0);
  }
}

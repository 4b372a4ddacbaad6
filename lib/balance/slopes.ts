import type { LeftNumbers } from "./held-numbers.js";

/** How what is left over goes with each of the four numbers of a held car. */
export type Slopes = readonly [LeftNumbers, LeftNumbers, LeftNumbers, LeftNumbers];

export const noSlopes = (): Slopes => [
  [0, 0, 0],
  [0, 0, 0],
  [0, 0, 0],
  [0, 0, 0],
];

/** Share of what was left over before a step: slopes whose step leaves more are of little use. */
export const HELPFUL = 0.5;

/**
 * Lets slopes say of a whole step what is left over after it – Broyden 1965, Math. Comp. 19, eq. 4.5.
 *
 * @param columns - of the numbers that the step moved, in its order
 */
export function learn(
  columns: readonly LeftNumbers[],
  step: readonly number[],
  left: LeftNumbers,
): void {
  let square = 0;
  for (let k = 0; k < step.length; k++) square += (step[k] as number) ** 2;
  if (!(square > 0)) return;
  for (let k = 0; k < step.length; k++) {
    const column = columns[k] as LeftNumbers;
    const share = (step[k] as number) / square;
    for (let i = 0; i < 3; i++) column[i] = (column[i] as number) + (left[i] as number) * share;
  }
}

import type { HeldNumbers, LeftNumbers, NumberedCar } from "./held-numbers.js";

/** How what is left over goes with each of the four numbers of a held car. */
export type Slopes = readonly [LeftNumbers, LeftNumbers, LeftNumbers, LeftNumbers];

const column = (): LeftNumbers => [0, 0, 0];

export const noSlopes = (): Slopes => [column(), column(), column(), column()];

export const copied = ([a, b, c, d]: Slopes): Slopes => [[...a], [...b], [...c], [...d]];

/** What leaves the car where it stands comes first, while it stands there. */
const QUICK_FIRST = [0, 2, 1, 3] as const;

/** Slopes at a place, where what is left over there is known. */
export function slopesAt(car: NumberedCar, at: HeldNumbers, left: LeftNumbers): Slopes {
  const columns = noSlopes();
  for (const k of QUICK_FIRST) car.slope(at, left, k, columns[k]);
  return columns;
}

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
  const square = step.reduce((sum, by) => sum + by * by, 0);
  if (!(square > 0)) return;
  step.forEach((by, k) => {
    const column = columns[k] as LeftNumbers;
    for (const i of [0, 1, 2] as const) column[i] += (left[i] * by) / square;
  });
}

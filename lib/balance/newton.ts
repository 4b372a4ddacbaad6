import { solveLinear } from "../linear.js";

const MOST_STEPS = 40;
const MOST_HALVINGS = 8;

/**
 * Finds numbers that make several functions zero at once, by Newton steps that are halved until
 * they help.
 *
 * @param residuals - as many functions as unknowns, scaled so that 1 is a large error
 * @param start - somewhere near the answer
 * @param small - for each unknown, a change small enough for a slope
 * @param tolerance - largest residual to stop at
 * @returns nothing when no answer was found from there
 */
export function newton(
  residuals: (unknowns: readonly number[]) => readonly number[],
  start: readonly number[],
  small: readonly number[],
  tolerance = 1e-12,
): number[] | undefined {
  let [x, r] = [[...start], residuals(start)];
  for (let i = 0; i < MOST_STEPS; i++) {
    if (size(r) <= tolerance) return x;
    const step = newtonStep(residuals, x, r, small);
    const better = step && walk(residuals, x, r, step);
    if (better === undefined) return size(r) <= tolerance * 1e3 ? x : undefined;
    [x, r] = better;
  }
  return undefined;
}

const size = (values: readonly number[]) => Math.max(...values.map(Math.abs));

function newtonStep(
  residuals: (unknowns: readonly number[]) => readonly number[],
  x: readonly number[],
  r: readonly number[],
  small: readonly number[],
): number[] | undefined {
  const columns = x.map((_, j) => {
    const step = small[j] ?? 1e-6;
    const beside = residuals(x.map((value, k) => (k === j ? value + step : value)));
    return beside.map((value, i) => (value - (r[i] ?? 0)) / step);
  });
  const matrix = r.map((_, i) => columns.map((column) => column[i] ?? 0));
  try {
    return solveLinear(
      matrix,
      r.map((value) => -value),
    );
  } catch {
    return undefined;
  }
}

function walk(
  residuals: (unknowns: readonly number[]) => readonly number[],
  x: readonly number[],
  r: readonly number[],
  step: readonly number[],
): [number[], readonly number[]] | undefined {
  for (let share = 1, i = 0; i < MOST_HALVINGS; i++, share /= 2) {
    const next = x.map((value, k) => value + share * (step[k] ?? 0));
    const after = residuals(next);
    if (size(after) < size(r)) return [next, after];
  }
  return undefined;
}

import { type Matrix, solveUpper, transpose, triangular } from "../linear.js";
import { Refusal } from "../refusal.js";
import { chiSquareAbove } from "../tails.js";
import type { Measured } from "./measured.js";
import { forFew } from "./repeats.js";

/** Numbers found by least squares. */
export interface LeastSquares {
  /** In the order of the columns, each with the spread that the readings' own spreads give it. */
  readonly found: readonly Measured[];
  /** What each reading is off from what was found, in its own spreads. */
  readonly residuals: readonly number[];
  /** Sum of their squares. */
  readonly chiSquare: number;
  /** Readings less numbers found. */
  readonly freedom: number;
  /** How often chance alone makes a misfit so large, 0–1; 1 where nothing is left to misfit. */
  readonly byChance: number;
}

/**
 * The numbers that fit readings best, each reading weighted by its spread.
 *
 * @param design - a row for each reading: by how much each number sought is in it
 * @param readings - SI, spreads above 0
 * @throws Refusal when the readings do not fix the numbers
 * @see Björck, Numerical Methods for Least Squares Problems, 1996, ch. 2.4 (by QR)
 */
export function leastSquares(
  design: readonly (readonly number[])[],
  readings: readonly Measured[],
): LeastSquares {
  const [rows, columns] = [design.length, design[0]?.length ?? 0];
  if (rows < columns || columns === 0 || readings.some(({ spread }) => !(spread > 0)))
    throw new Refusal("not-determined", "The readings do not fix the numbers.");
  const weighted = design.map((row, i) => row.map((part) => part / spreadAt(readings, i)));
  const right = readings.map(({ value, spread }) => value / spread);
  const sizes = columnSizes(weighted, columns);
  const scaled = weighted.map((row) => row.map((part, j) => part / (sizes[j] ?? 1)));
  const turned = triangular(scaled, right);
  if (!isDetermined(turned.upper))
    throw new Refusal("not-determined", "The readings do not fix the numbers.");
  const inverse = inverseOf(turned.upper);
  const found = solveUpper(turned.upper, turned.right).map((value, j) => ({
    value: value / (sizes[j] ?? 1),
    spread: Math.hypot(...(inverse[j] ?? [])) / (sizes[j] ?? 1), // (XᵀX)⁻¹ = R⁻¹R⁻ᵀ
  }));
  const residuals = weighted.map(
    (row, i) =>
      (right[i] ?? 0) - row.reduce((sum, part, j) => sum + part * (found[j]?.value ?? 0), 0),
  );
  const chiSquare = residuals.reduce((sum, one) => sum + one ** 2, 0);
  const freedom = rows - columns;
  return {
    ...{ found, residuals, chiSquare, freedom },
    byChance: freedom === 0 ? 1 : chiSquareAbove(chiSquare, freedom),
  };
}

const spreadAt = (readings: readonly Measured[], i: number) => readings[i]?.spread ?? 1;

function columnSizes(rows: readonly (readonly number[])[], columns: number): number[] {
  return Array.from(
    { length: columns },
    (_, j) => Math.hypot(...rows.map((row) => row[j] ?? 0)) || 1,
  );
}

/** Whether no column is the others' sum, to within what rounding leaves. */
function isDetermined(upper: Matrix): boolean {
  return upper.every((row, j) => Math.abs(row[j] ?? 0) > 1e-12); // columns have size 1
}

/** Rows of the inverse. */
const inverseOf = (upper: Matrix): number[][] =>
  transpose(upper.map((_, j) => solveUpper(upper, unit(upper.length, j))));

const unit = (length: number, at: number) => Array.from({ length }, (_, i) => (i === at ? 1 : 0));

/** What chance makes no more than once in twenty counts as more than chance. */
export const SELDOM = 0.05;

/**
 * The same, widened where readings scatter more than their own spreads say: by as much as they do
 * (Birge's ratio), and where that is more than chance, by Student's t of how few of them tell it.
 * Nothing is made narrower.
 *
 * @see Birge 1932, Physical Review 40, 207, "The Calculation of Errors by the Method of Least Squares"
 */
export function widened(fit: LeastSquares): LeastSquares {
  const { chiSquare, freedom, byChance, found } = fit;
  if (freedom === 0 || chiSquare <= freedom) return fit;
  const factor = Math.sqrt(chiSquare / freedom) * (byChance < SELDOM ? forFew(freedom) : 1);
  return { ...fit, found: found.map(({ value, spread }) => ({ value, spread: spread * factor })) };
}

import { Refusal } from "./refusal.js";

/** Rows of a matrix. */
export type Matrix = readonly (readonly number[])[];

const NEXT_TO_NONE = 1e-6; // least pivot of something stable, against its diagonal
const SINGULAR = 1e-12; // least pivot, against the greatest entry of its row

/**
 * Solves a square system of linear equations by elimination with scaled row pivoting.
 *
 * @param matrix - n rows of n numbers
 * @param right - n numbers
 * @returns the n unknowns
 * @throws Refusal when the equations do not fix the unknowns
 */
export function solveLinear(matrix: Matrix, right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  const scales = rows.map((row) => Math.max(...row.slice(0, -1).map(Math.abs)));
  for (let column = 0; column < rows.length; column++) eliminate(rows, scales, column);
  return substitute(rows);
}

function eliminate(rows: number[][], scales: number[], column: number): void {
  const size = (i: number) => Math.abs(rows[i]?.[column] ?? 0) / (scales[i] || 1);
  let best = column;
  for (let i = column + 1; i < rows.length; i++) if (size(i) > size(best)) best = i;
  if (!(size(best) > SINGULAR))
    throw new Refusal("not-determined", "The equations do not fix the unknowns.");
  swap(rows, column, best);
  swap(scales, column, best);
  const pivot = rows[column] ?? [];
  for (const row of rows.slice(column + 1)) {
    subtract(row, pivot, (row[column] ?? 0) / (pivot[column] ?? 1), column);
  }
}

function substitute(rows: number[][]): number[] {
  const n = rows.length;
  const unknowns = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const row = rows[i] ?? [];
    let rest = row[n] ?? 0;
    for (let j = i + 1; j < n; j++) rest -= (row[j] ?? 0) * (unknowns[j] ?? 0);
    unknowns[i] = rest / (row[i] ?? 1);
  }
  return unknowns;
}

function swap<Item>(items: Item[], i: number, j: number): void {
  const [a, b] = [items[i], items[j]];
  if (a === undefined || b === undefined) return;
  [items[i], items[j]] = [b, a];
}

/**
 * Solves equations whose matrix is symmetric and positive, as that of anything stable is.
 *
 * @param refusal - the sentence for what is not stable
 * @throws Refusal when some motion meets no resistance, or next to none
 * @see K = L·D·Lᵀ, Golub & Van Loan 2013, ch. 4.1
 */
export function solveStable(
  matrix: Matrix,
  right: readonly number[],
  refusal = "Some motion meets no resistance: nothing holds it in place.",
): number[] {
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  rows.forEach((pivotRow, i) => {
    const pivot = pivotRow[i] ?? 0;
    if (!(pivot > NEXT_TO_NONE * (matrix[i]?.[i] ?? 0)))
      throw new Refusal("not-determined", refusal);
    for (const row of rows.slice(i + 1)) subtract(row, pivotRow, (row[i] ?? 0) / pivot, i);
  });
  return substitute(rows);
}

function subtract(row: number[], other: readonly number[], factor: number, from: number): void {
  for (let j = from; j < row.length; j++) row[j] = (row[j] ?? 0) - factor * (other[j] ?? 0);
}

/** Unknowns of equations of which each has only those from its own on. */
export const solveUpper = (upper: Matrix, right: readonly number[]): number[] =>
  substitute(upper.map((row, i) => [...row, right[i] ?? 0]));

/**
 * Rows of at least as many equations as unknowns, turned so that each has only the unknowns from its
 * own on; what the unknowns cannot meet is left in the rest of the right side, of the same size as before.
 *
 * @see R and Qᵀb of A = Q·R by Householder's reflections, Golub & Van Loan 2013, ch. 5.2
 */
export function triangular(
  matrix: Matrix,
  right: readonly number[],
): { readonly upper: number[][]; readonly right: number[] } {
  const columns = matrix[0]?.length ?? 0;
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  for (let j = 0; j < columns; j++) reflect(rows, j);
  const upper = rows.slice(0, columns);
  return {
    upper: upper.map((row, i) => row.slice(0, columns).map((entry, j) => (j < i ? 0 : entry))),
    right: upper.map((row) => row[columns] ?? 0),
  };
}

/** Mirrors rows so that a column has nothing left below its diagonal. */
function reflect(rows: number[][], column: number): void {
  const across = rows.map((row, i) => (i < column ? 0 : (row[column] ?? 0)));
  const first = across[column] ?? 0;
  across[column] = first + (first < 0 ? -1 : 1) * Math.hypot(...across); // no digits lost: same signs
  const size = dot(across, across);
  if (size === 0) return;
  for (let j = column; j < (rows[0]?.length ?? 0); j++) {
    const along = rows.reduce((sum, row, i) => sum + (row[j] ?? 0) * (across[i] ?? 0), 0);
    rows.forEach((row, i) => {
      row[j] = (row[j] ?? 0) - ((2 * along) / size) * (across[i] ?? 0);
    });
  }
}

/** Matrix times vector. */
export const multiply = (matrix: Matrix, vector: readonly number[]): number[] =>
  matrix.map((row) => dot(row, vector));

/** Sum of products; a loop, which is several times quicker than `reduce` here. */
function dot(row: readonly number[], vector: readonly number[]): number {
  let sum = 0;
  for (let j = 0; j < row.length; j++) sum += (row[j] ?? 0) * (vector[j] ?? 0);
  return sum;
}

/** Rows and columns exchanged. */
export const transpose = (matrix: Matrix): number[][] =>
  (matrix[0] ?? []).map((_, j) => matrix.map((row) => row[j] ?? 0));

/**
 * Of all solutions of fewer equations than unknowns, the one with the least sum of squares.
 *
 * @throws Refusal when the equations contradict or repeat each other
 * @see x = Aᵀ(AAᵀ)⁻¹b, Golub & Van Loan 2013, ch. 5.6
 */
export function leastNorm(matrix: Matrix, right: readonly number[]): number[] {
  const across = transpose(matrix);
  const square = matrix.map((row) => multiply(matrix, row));
  return multiply(across, solveLinear(square, right));
}

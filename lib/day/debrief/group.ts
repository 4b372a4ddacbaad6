import type { PhaseName } from "../../balance/phases.js";
import type { FeltCell } from "./felt.js";
import type { Verdict } from "./felt-reasons.js";

/** What a group felt in one part of one corner, without names. */
export interface GroupCell {
  readonly corner: string;
  readonly phase: PhaseName;
  /** How many drivers could compare there. */
  readonly count: number;
  /** Left out for groups so small that a name could be guessed. */
  readonly felt?: {
    /** Points, above 0 towards the front. */
    readonly median: number;
    /** Points: half of the drivers are at most this far from the median. */
    readonly spread: number;
    readonly verdicts: Readonly<Partial<Record<Verdict, number>>>;
  };
}

/** Fewer drivers than this are only counted: who said what could be guessed – common practice, no source. */
const SMALLEST_GROUP = 3;

/**
 * One summary of what several drivers felt.
 *
 * @param drivers - for each driver, the cells from `feltAgainstPredicted`
 */
export function groupSummary(
  drivers: readonly (readonly FeltCell[])[],
  smallestGroup = SMALLEST_GROUP,
): GroupCell[] {
  const places = new Map<string, FeltCell[]>();
  for (const cell of drivers.flat()) {
    const key = JSON.stringify([cell.corner, cell.phase]);
    places.set(key, [...(places.get(key) ?? []), cell]);
  }
  return [...places.values()].flatMap((cells) => groupCell(cells, smallestGroup));
}

function groupCell(cells: readonly FeltCell[], smallestGroup: number): GroupCell[] {
  const [first] = cells;
  if (first === undefined) return [];
  const felt = cells.flatMap((cell) => (cell.felt === undefined ? [] : [cell.felt]));
  const place = { corner: first.corner, phase: first.phase, count: felt.length };
  if (felt.length < smallestGroup) return [place];
  const middle = median(felt);
  const spread = median(felt.map((value) => Math.abs(value - middle)));
  return [{ ...place, felt: { median: middle, spread, verdicts: counted(cells) } }];
}

/**
 * The middle of some numbers, or the mean of the two in the middle; 0 of none.
 *
 * @example
 * median([3, 1, 2]) // → 2
 */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const lower = sorted[Math.floor((sorted.length - 1) / 2)] ?? 0;
  return (lower + upper) / 2;
}

function counted(cells: readonly FeltCell[]): Partial<Record<Verdict, number>> {
  const counts: Partial<Record<Verdict, number>> = {};
  for (const { verdict } of cells) counts[verdict] = (counts[verdict] ?? 0) + 1;
  return counts;
}

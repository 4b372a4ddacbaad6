import type { Ride, Three } from "./ride.js";

/** A quantity at even steps of time. */
export type Row = Float64Array;

/** What was felt at even steps, whatever the device's own rate was. */
export interface Evenly {
  /** s of the first step */
  readonly start: number;
  readonly count: number;
  readonly force: readonly [Row, Row, Row];
  readonly turn: readonly [Row, Row, Row];
  /** 1 where a step lies in a time in which the device told nothing, 2 where for a second or more. */
  readonly gap: Uint8Array;
}

/** s from one step to the next */
export const STEP = 0.02;

const GAP = 0.3; // s without a sample: less is bridged by a straight line
const LONG_GAP = 1; // s

export const stepsIn = (seconds: number): number => Math.max(1, Math.round(seconds / STEP));

/** Samples laid on even steps, by straight lines from one to the next. */
export function evenly({ felt }: Ride): Evenly {
  const start = felt[0]?.time ?? 0;
  const count = Math.floor(((felt.at(-1)?.time ?? start) - start) / STEP) + 1;
  const rows = () => [0, 1, 2].map(() => new Float64Array(count)) as [Row, Row, Row];
  const [force, turn, gap] = [rows(), rows(), new Uint8Array(count)];
  let at = 0;
  for (let i = 0; i < count; i++) {
    const time = start + i * STEP;
    while (at + 2 < felt.length && (felt[at + 1]?.time ?? Infinity) < time) at++;
    const [a, b] = [felt[at], felt[at + 1]];
    if (!a || !b) continue;
    const part = Math.min(1, (time - a.time) / (b.time - a.time));
    fill(force, i, a.force, b.force, part);
    fill(turn, i, a.turn, b.turn, part);
    gap[i] = gapOf(b.time - a.time);
  }
  return { start, count, force, turn, gap };
}

const gapOf = (seconds: number) => (seconds > LONG_GAP ? 2 : seconds > GAP ? 1 : 0);

function fill(rows: readonly Row[], i: number, a: Three, b: Three, part: number): void {
  for (const [axis, row] of rows.entries()) {
    const [from, to] = [a[axis] ?? 0, b[axis] ?? 0];
    row[i] = from + part * (to - from);
  }
}

/** Mean over a time around each step, shorter at both ends. */
export function smooth(row: Row, seconds: number): Row {
  const half = Math.floor(stepsIn(seconds) / 2);
  const sums = new Float64Array(row.length + 1);
  for (let i = 0; i < row.length; i++) sums[i + 1] = (sums[i] ?? 0) + (row[i] ?? 0);
  return row.map((_, i) => {
    const [from, to] = [Math.max(0, i - half), Math.min(row.length, i + half + 1)];
    return ((sums[to] ?? 0) - (sums[from] ?? 0)) / (to - from);
  });
}

/** Integral over time from the first step on, by the trapezoidal rule. */
export function integral(row: Row): Row {
  const sums = new Float64Array(row.length);
  for (let i = 1; i < row.length; i++)
    sums[i] = (sums[i - 1] ?? 0) + (STEP / 2) * ((row[i - 1] ?? 0) + (row[i] ?? 0));
  return sums;
}

/** Mean over steps from one to another, the last left out. */
export function meanOver(row: Row, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += row[i] ?? 0;
  return sum / (to - from);
}

/** Steps from one on, the last left out. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Stretches in which something holds, of a length at least. */
export function stretchesWhere(
  count: number,
  holds: (step: number) => boolean,
  least: number,
): Stretch[] {
  const found: Stretch[] = [];
  let from = -1;
  for (let i = 0; i <= count; i++) {
    const yes = i < count && holds(i);
    if (yes && from < 0) from = i;
    if (yes || from < 0) continue;
    if (i - from >= least) found.push({ from, to: i });
    from = -1;
  }
  return found;
}

/** A quantity at any time, by a straight line between steps. */
export function atTime(row: Row, start: number, time: number): number {
  const place = Math.min(row.length - 1, Math.max(0, (time - start) / STEP));
  const i = Math.min(row.length - 2, Math.floor(place));
  const [a, b] = [row[i] ?? 0, row[i + 1] ?? 0];
  return a + (place - i) * (b - a);
}

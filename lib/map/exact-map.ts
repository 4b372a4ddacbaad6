import { cellAt, type MapCell } from "./map-cell.js";
import { gridOf, type MapGrid } from "./map-grid.js";
import type { MapOf } from "./map-of.js";
import { emptyMap, type SetUpMap, setCell, setRow } from "./set-up-map.js";

const SPAN = 16; // places from one that is worked out from nothing to the next
const SAME_TURN = 1e-3; // m/s²
const SAME_MARGIN = 0.01; // m/s²

/**
 * Works out one row of a map in full, place by place: goes on when asked for the next.
 *
 * Some places are worked out from nothing and those between from the place beside, which is quicker
 * but can follow a top or a hill that is no longer the highest. So the walk goes on to the next place
 * that is known, and where it does not come to the same there, the span is halved. Few places, as of
 * a bar, lie too far from each other for that: each of them is worked out from nothing.
 *
 * No row knows of another: rows give the same figures wherever and in whatever order they are
 * worked out.
 *
 * @returns a map of that row alone
 */
export function* exactCells(of: MapOf, grid: MapGrid, row: number): Generator<void, SetUpMap> {
  const y = grid.up[row] ?? 0;
  const worked = emptyMap({ along: grid.along, up: [y] });
  const last = grid.along.length - 1;
  const ask = (column: number, start?: MapCell["start"]): MapCell =>
    cellAt(of, { x: grid.along[column] ?? 0, y }, start);
  const keep = (column: number, cell: MapCell) => setCell(worked, column, cell);
  let left = ask(0);
  keep(0, left);
  yield;
  const span = last < SPAN ? 1 : SPAN;
  for (let from = 0; from < last; from += span) {
    const to = Math.min(last, from + span);
    const right = ask(to);
    keep(to, right);
    yield;
    yield* cellsBetween({ from, to, left, right }, ask, keep);
    left = right;
  }
  return worked;
}

interface Span {
  readonly from: number;
  readonly to: number;
  readonly left: MapCell;
  readonly right: MapCell;
}

function* cellsBetween(
  { from, to, left, right }: Span,
  ask: (column: number, start?: MapCell["start"]) => MapCell,
  keep: (column: number, cell: MapCell) => void,
): Generator<void, void> {
  if (to - from < 2) return;
  if (left.state !== "balanced" && left.state === right.state) {
    for (let column = from + 1; column < to; column++) keep(column, left); // nothing is drawn there
    return;
  }
  let before = left;
  for (let column = from + 1; column < to; column++) {
    before = ask(column, before.start);
    keep(column, before);
    yield;
  }
  if (isSame(ask(to, before.start), right)) return;
  const middle = Math.floor((from + to) / 2);
  const known = ask(middle);
  keep(middle, known);
  yield;
  yield* cellsBetween({ from, to: middle, left, right: known }, ask, keep);
  yield* cellsBetween({ from: middle, to, left: known, right }, ask, keep);
}

const isSame = (a: MapCell, b: MapCell): boolean =>
  a.state === b.state &&
  Math.abs(a.lateralAcceleration - b.lateralAcceleration) < SAME_TURN &&
  Math.abs(a.understeerMargin - b.understeerMargin) < SAME_MARGIN;

/** The same in one go. */
export function exactRow(of: MapOf, grid: MapGrid, row: number): SetUpMap {
  const cells = exactCells(of, grid, row);
  for (;;) {
    const { done, value } = cells.next();
    if (done) return value;
  }
}

/** A whole map, worked out in full. */
export function exactMap(of: MapOf, grid: MapGrid = gridOf(of)): SetUpMap {
  const map = emptyMap(grid);
  for (let row = 0; row < map.rows; row++) setRow(map, row, exactRow(of, grid, row));
  return map;
}

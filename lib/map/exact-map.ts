import { cellAt, type MapCell, placeStates } from "./map-cell.js";
import { gridOf, type MapGrid } from "./map-grid.js";
import type { MapOf } from "./map-of.js";
import { emptyMap, type SetUpMap, setCell, setRow } from "./set-up-map.js";

const SPAN = 16; // places from one that is worked out from nothing to the next
const SAME_TURN = 1e-3; // m/s²
const SAME_MARGIN = 0.01; // m/s²
const ROUGH_TURN = 2e-3; // m/s² by which a place may bend away from the two beside it
const ROUGH_MARGIN = 0.01;

/**
 * Works out one row of a map in full, place by place: goes on when asked for the next.
 *
 * Some places are worked out from nothing and those between from the place beside. That is quicker,
 * but the walk can follow a top of the path that is no longer the highest until it falls off it. So
 * wherever the row is rough, or the walk comes to another end than the next place that is known, places
 * are worked out from nothing, on and on to both sides until they agree with the walk. Few places, as
 * of a bar, lie too far from each other for walking: each is worked out from nothing.
 *
 * No row knows of another: rows give the same figures wherever and in whatever order they are
 * worked out.
 *
 * @returns a map of that row alone
 */
export function* exactCells(of: MapOf, grid: MapGrid, row: number): Generator<void, SetUpMap> {
  const walked = rowOf(of, grid, row);
  const last = grid.along.length - 1;
  const span = last < SPAN ? 1 : SPAN;
  let left = walked.from(0);
  yield;
  for (let from = 0; from < last; from += span) {
    const to = Math.min(last, from + span);
    const right = walked.from(to);
    yield;
    yield* cellsBetween(walked, { from, to, left, right });
    left = right;
  }
  return walked.map;
}

interface WalkedRow {
  readonly map: SetUpMap;
  /** Works a place out, from a place beside it or from nothing, and keeps it. */
  from(column: number, beside?: MapCell): MapCell;
  /** Works a place out from nothing; whether what was kept there was the same. */
  wasSame(column: number): boolean;
  /** Where the walk from a place comes to. */
  to(column: number, beside: MapCell): MapCell;
  isRough(column: number): boolean;
}

function rowOf(of: MapOf, grid: MapGrid, row: number): WalkedRow {
  const y = grid.up[row] ?? 0;
  const map = emptyMap({ along: grid.along, up: [y] });
  const to = (column: number, beside?: MapCell) =>
    cellAt(of, { x: grid.along[column] ?? 0, y }, beside?.start);
  const from = (column: number, beside?: MapCell) => {
    const cell = to(column, beside);
    setCell(map, column, cell);
    return cell;
  };
  return {
    map,
    from,
    to,
    wasSame(column) {
      const [margin = 0, turn = 0] = [
        map.understeerMargin[column],
        map.lateralAcceleration[column],
      ];
      const state = placeStates[map.state[column] ?? 0] ?? "balanced";
      return isSame(from(column), { understeerMargin: margin, lateralAcceleration: turn, state });
    },
    isRough: (column) =>
      bendOf(map.lateralAcceleration, column) > ROUGH_TURN ||
      bendOf(map.understeerMargin, column) > ROUGH_MARGIN,
  };
}

const bendOf = (values: Float64Array, at: number): number =>
  Math.abs((values[at - 1] ?? 0) - 2 * (values[at] ?? 0) + (values[at + 1] ?? 0));

interface Span {
  readonly from: number;
  readonly to: number;
  readonly left: MapCell;
  readonly right: MapCell;
}

function* cellsBetween(row: WalkedRow, { from, to, left, right }: Span): Generator<void, void> {
  if (left.state !== "balanced" && left.state === right.state) {
    for (let column = from + 1; column < to; column++) setCell(row.map, column, left); // not drawn
    return;
  }
  let beside = left;
  for (let column = from + 1; column < to; column++) {
    beside = row.from(column, beside);
    yield;
  }
  const known = new Set([from, to]);
  function* mend(start: number, step: 1 | -1): Generator<void, void> {
    for (let column = start; !known.has(column); column += step) {
      known.add(column);
      yield;
      if (row.wasSame(column)) return;
    }
  }
  if (!isSame(row.to(to, beside), right)) yield* mend(to - 1, -1);
  for (let column = from + 1; column < to; column++) {
    if (!row.isRough(column)) continue;
    yield* mend(column, -1);
    yield* mend(column + 1, 1);
  }
}

type Compared = Pick<MapCell, "understeerMargin" | "lateralAcceleration" | "state">;

const isSame = (a: Compared, b: Compared): boolean =>
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

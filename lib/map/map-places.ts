import type { Knots } from "./knots.js";
import type { MapGrid } from "./map-grid.js";

/** A place of a grid, 0–1 each way. */
export interface Place {
  readonly x: number;
  readonly y: number;
  /** where it stands in the map */
  readonly at: number;
}

/** Places of a grid at two lists of coordinates, which are all among its own, along x first. */
export function placesAt(grid: MapGrid, xs: readonly number[], ys: readonly number[]): Place[] {
  const column = (x: number) => Math.round(x * (grid.along.length - 1));
  const row = (y: number) => Math.round(y * (grid.up.length - 1));
  return ys.flatMap((y) => xs.map((x) => ({ x, y, at: row(y) * grid.along.length + column(x) })));
}

/** Half way between knots, every other one, like the dark fields of a chessboard. */
export function halfWayPlaces(grid: MapGrid, along: Knots, up: Knots): Place[] {
  const all = placesAt(grid, between(along, grid.along), between(up, grid.up));
  return all.filter((_, i) => i % 2 === 0);
}

/** Half way between neighbouring knots, on places of the grid; of a bar the positions themselves. */
function between({ at }: Knots, places: readonly number[]): number[] {
  if (at.length === places.length) return [...at];
  const last = places.length - 1;
  return at.slice(1).map((place, i) => Math.round(((place + (at[i] ?? 0)) / 2) * last) / last);
}

const SCATTERED = 1; // each costs as much as several that begin near

/**
 * A few places scattered over a grid, others in each round: additive recurrence with the plastic
 * number – Roberts 2018, from memory.
 */
export function scatteredPlaces(grid: MapGrid, round: number): Place[] {
  return Array.from({ length: SCATTERED }, (_, i) => {
    const k = round * SCATTERED + i + 1;
    const part = (step: number, places: readonly number[]) =>
      places[Math.floor(((k * step) % 1) * places.length)] ?? 0;
    return placesAt(grid, [part(0.7548776662, grid.along)], [part(0.5698402909, grid.up)]);
  }).flat();
}

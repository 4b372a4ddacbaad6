import type { MapGrid } from "./map-grid.js";
import { emptyMap, type SetUpMap } from "./set-up-map.js";

/** A map on a finer grid, straight between the places it has; without a balance beside one without. */
export function finerMap(map: SetUpMap, grid: MapGrid): SetUpMap {
  const fine = emptyMap(grid);
  for (const [row, y] of grid.up.entries())
    for (const [column, x] of grid.along.entries()) {
      const at = row * fine.columns + column;
      const corners = placesAround(map, x, y);
      for (const name of ["understeerMargin", "lateralAcceleration"] as const)
        fine[name][at] = corners.reduce(
          (sum, { at, part }) => sum + part * (map[name][at] ?? 0),
          0,
        );
      fine.room[at] = Math.min(...corners.map(({ at }) => map.room[at] ?? 0));
      fine.state[at] = Math.max(...corners.map(({ at }) => map.state[at] ?? 0));
    }
  return fine;
}

/** The places of a map around a place, 0–1, and how much each of them counts. */
export function placesAround({ columns, rows }: SetUpMap, x: number, y: number) {
  const [u, v] = [x * (columns - 1), y * (rows - 1)];
  const [column, row] = [Math.min(columns - 2, Math.floor(u)), Math.min(rows - 2, Math.floor(v))];
  const [right, upper] = [u - column, v - row];
  const corner = (i: 0 | 1, j: 0 | 1) => ({
    at: (row + j) * columns + column + i,
    part: (i ? right : 1 - right) * (j ? upper : 1 - upper),
  });
  return [corner(0, 0), corner(1, 0), corner(0, 1), corner(1, 1)].filter(({ part }) => part > 1e-9);
}

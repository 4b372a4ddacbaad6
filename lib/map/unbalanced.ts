import { type PlaceState, placeStates } from "./map-cell.js";
import type { MapGrid } from "./map-grid.js";
import type { Place } from "./map-places.js";
import type { SetUpMap } from "./set-up-map.js";

/** Marks all between knots where one place has no balance, and where the map before had none. */
export function markUnbalanced(
  map: SetUpMap,
  base: SetUpMap,
  knots: MapGrid,
  solved: readonly (Place & { readonly state: PlaceState })[],
): void {
  map.state.set(base.state);
  const unbalanced = solved.filter(({ state }) => state !== "balanced");
  for (const { x, y, state } of unbalanced) {
    const [columns, rows] = [around(knots.along, x, map.columns), around(knots.up, y, map.rows)];
    for (let row = rows.first; row <= rows.last; row++)
      map.state.fill(
        placeStates.indexOf(state),
        row * map.columns + columns.first,
        row * map.columns + columns.last + 1,
      );
  }
}

/** The columns or rows from the knot before a place to the knot after it. */
function around(knots: readonly number[], place: number, count: number) {
  const before = Math.max(0, ...knots.filter((knot) => knot < place));
  const after = Math.min(1, ...knots.filter((knot) => knot > place));
  return { first: Math.round(before * (count - 1)), last: Math.round(after * (count - 1)) };
}

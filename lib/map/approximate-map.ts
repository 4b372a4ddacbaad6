import type { BalanceStart } from "../balance/car-balance.js";
import { type Knots, knotsOf } from "./knots.js";
import { cellAt, type MapCell, placeStates, workedOut } from "./map-cell.js";
import { gridOf, type MapGrid } from "./map-grid.js";
import { type MapOf, valueAt } from "./map-of.js";
import { halfWayPlaces, type Place, placesAt, scatteredPlaces } from "./map-places.js";
import { numbersBetween } from "./numbers-between.js";
import { emptyMap, type SetUpMap } from "./set-up-map.js";
import { markUnbalanced } from "./unbalanced.js";

/** A map from few places worked out in full, with how far it is off. */
export interface ApproximateMap extends SetUpMap {
  /**
   * m/s²: the largest difference in balance and in hardest turn at the places that were worked out
   * besides: half way between knots, where a smooth quantity is off most, and some scattered ones
   */
  readonly error: number;
  /** where the search at the same places begins in the next map, by place */
  readonly starts: ReadonlyMap<number, BalanceStart>;
}

/** Error up to which a map may be drawn while a lever moves, m/s²; above it that is said. */
export const MAP_ERROR_ALLOWED = 0.03;

interface Approximating {
  /** an exact map over the same two axes, on the same grid */
  readonly base?: SetUpMap | undefined;
  /** the map before, of a car that differs little */
  readonly near?: ApproximateMap | undefined;
  /** counted up from map to map, so that other scattered places are checked each time */
  readonly round?: number;
}

type Solved = Place & MapCell;

/**
 * Balance and grip over two levers, worked out at few places and interpolated between them.
 *
 * With a map that is known in full for another value of a third lever only what changes from it is
 * interpolated: bends that are in both maps stay.
 *
 * @throws Refusal when the car can stand at none of the places
 */
export function approximateMap(
  of: MapOf,
  grid: MapGrid = gridOf(of),
  from: Approximating = {},
): ApproximateMap {
  const { base = emptyMap(grid), round = 0 } = from;
  const [along, up] = [knotsOf(of.along, grid.along), knotsOf(of.up, grid.up)];
  const solve = solver(of, from);
  const knots = placesAt(grid, along.at, up.at).map(solve);
  if (knots.every(({ state }) => state === "cannot stand"))
    workedOut(of, valueAt(of.along, 0), valueAt(of.up, 0)); // throws what the reason is
  const checks = [...halfWayPlaces(grid, along, up), ...scatteredPlaces(grid, round)].map(solve);
  const [map, solved] = [interpolated(grid, base, { along, up, knots }), [...knots, ...checks]];
  markUnbalanced(map, base, { along: along.at, up: up.at }, solved);
  return {
    ...map,
    error: Math.max(0, ...checks.map((check) => errorAt(map, check))),
    starts: new Map(solved.flatMap(({ at, start }) => (start ? [[at, start] as const] : []))),
  };
}

const ANEW = 32; // one place in so many is worked out from nothing, others in each round

/**
 * Works places out, each from where it was in the map before: that is quick, but can follow a top
 * that is no longer the highest. So each is worked out from nothing now and then.
 */
function solver(of: MapOf, { near, round = 0 }: Approximating): (place: Place) => Solved {
  let count = round;
  return (place) => {
    const start = ++count % ANEW === 0 ? undefined : near?.starts.get(place.at);
    return { ...place, ...cellAt(of, place, start) };
  };
}

interface KnotsSolved {
  readonly along: Knots;
  readonly up: Knots;
  readonly knots: readonly Solved[];
}

function interpolated(grid: MapGrid, base: SetUpMap, { along, up, knots }: KnotsSolved): SetUpMap {
  const map = emptyMap(grid);
  const numbers = numbersBetween(along, up, numbersOf(base, knots));
  for (const [row, y] of grid.up.entries()) {
    for (const [column, x] of grid.along.entries()) {
      const at = row * map.columns + column;
      const [margin = 0, turn = 0, ...rooms] = numbers(x, y);
      map.understeerMargin[at] = (base.understeerMargin[at] ?? 0) + margin;
      map.lateralAcceleration[at] = (base.lateralAcceleration[at] ?? 0) + turn;
      map.room[at] = Math.min(...rooms);
    }
  }
  return map;
}

const CANNOT_STAND = placeStates.indexOf("cannot stand");

/** What is interpolated: changes of margin and turn since a map, and the room inside each limit. */
function numbersOf(base: SetUpMap, knots: readonly Solved[]): number[][] {
  const known = knots.map(({ at, state, understeerMargin, lateralAcceleration, rooms }) =>
    state === "cannot stand" || base.state[at] === CANNOT_STAND
      ? undefined
      : [
          understeerMargin - (base.understeerMargin[at] ?? 0),
          lateralAcceleration - (base.lateralAcceleration[at] ?? 0),
          ...rooms,
        ],
  );
  const mean = meanOf(known.filter((numbers) => numbers !== undefined));
  return known.map((numbers) => numbers ?? mean); // what is put there is not drawn
}

const meanOf = (lists: readonly (readonly number[])[]): number[] =>
  (lists[0] ?? []).map(
    (_, k) => lists.reduce((sum, list) => sum + (list[k] ?? 0), 0) / lists.length,
  );

function errorAt(map: SetUpMap, { at, state, understeerMargin, lateralAcceleration }: Solved) {
  if (state !== "balanced" || map.state[at] !== 0) return 0;
  return Math.max(
    Math.abs((map.understeerMargin[at] ?? 0) - understeerMargin),
    Math.abs((map.lateralAcceleration[at] ?? 0) - lateralAcceleration),
  );
}

import { marginsOf } from "../statics/margins.js";
import { type MapAxis, settingsOf } from "./map-axis.js";
import { carOnMap, type MapOf, placeOn, type SetUpMap } from "./set-up-map.js";

/** Settings of both levers of a map, SI. */
export interface MapPlace {
  readonly x: number;
  readonly y: number;
}

interface Ranked extends MapPlace {
  readonly turn: number;
}

/**
 * The settings at which the car of a map turns hardest, among those that can be made and hold every
 * limit of the class; nothing where none does.
 *
 * Settings are ranked by the drawn map, so that among near equals it may miss the best by the map's
 * own error; whether they hold the limits is worked out in full.
 */
export function hardestOn(of: MapOf, map: SetUpMap): MapPlace | undefined {
  const found = ranked(of, map).find(({ x, y }) => holdsLimits(of, x, y));
  return found === undefined ? undefined : { x: found.x, y: found.y };
}

/** Steps of the narrowest limit by which the drawn map may be wrong; what is further out is left out. */
const DOUBT = 1;

function ranked({ along, up }: MapOf, map: SetUpMap): Ranked[] {
  const limited = map.room.length > 0;
  return settingsOf(up)
    .flatMap((y) =>
      settingsOf(along).flatMap((x): Ranked[] => {
        const read = (values: Float64Array) => between(map, values, along, up, { x, y });
        if (limited && read(map.room) < -DOUBT) return [];
        return [{ x, y, turn: read(map.lateralAcceleration) }];
      }),
    )
    .sort((a, b) => b.turn - a.turn);
}

/** A quantity of the map at settings between its columns and rows. */
function between(
  { columns, rows }: SetUpMap,
  values: Float64Array,
  along: MapAxis,
  up: MapAxis,
  { x, y }: MapPlace,
): number {
  const [u, v] = [placeOn(along, x) * (columns - 1), placeOn(up, y) * (rows - 1)];
  const [column, row] = [Math.min(columns - 2, Math.floor(u)), Math.min(rows - 2, Math.floor(v))];
  const at = (i: number, j: number) => values[(row + j) * columns + column + i] ?? 0;
  const [right, upper] = [u - column, v - row];
  const lower = (1 - right) * at(0, 0) + right * at(1, 0);
  return (1 - upper) * lower + upper * ((1 - right) * at(0, 1) + right * at(1, 1));
}

function holdsLimits(of: MapOf, x: number, y: number): boolean {
  try {
    return marginsOf(carOnMap(of, x, y), of.measured).every(({ margin }) => margin >= 0);
  } catch (error) {
    if (error instanceof RangeError) return false; // it cannot stand so
    throw error;
  }
}

import { orUndefined } from "../refusal.js";
import { marginsOf } from "../statics/margins.js";
import { placesAround } from "./finer-map.js";
import { settingsOf } from "./map-axis.js";
import { carOnMap, type MapOf, placeOn } from "./map-of.js";
import { hasLimits, type SetUpMap } from "./set-up-map.js";

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
  const limited = hasLimits(map);
  return settingsOf(up)
    .flatMap((y) =>
      settingsOf(along).flatMap((x): Ranked[] => {
        const corners = placesAround(map, placeOn(along, x), placeOn(up, y));
        if (corners.some(({ at }) => map.state[at] !== 0)) return [];
        const read = (values: Float64Array) =>
          corners.reduce((sum, { at, part }) => sum + part * (values[at] ?? 0), 0);
        if (limited && read(map.room) < -DOUBT) return [];
        return [{ x, y, turn: read(map.lateralAcceleration) }];
      }),
    )
    .sort((a, b) => b.turn - a.turn);
}

function holdsLimits(of: MapOf, x: number, y: number): boolean {
  const margins = orUndefined(() => marginsOf(carOnMap(of, x, y))); // none: it cannot stand so
  return margins?.every(({ margin }) => margin >= 0) ?? false;
}

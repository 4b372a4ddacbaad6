import { carBalance } from "../balance/car-balance.js";
import { knotsOf } from "./knots.js";
import type { MapAxis } from "./map-axis.js";
import { readMap } from "./map-reading.js";
import { blendOf, type MapOf, valueAt } from "./set-up-map.js";

/**
 * How far the blended cars of a map are from cars worked out in full, m/s²: the largest difference
 * in balance and in grip at places half way between knots, where a blend is worst.
 *
 * @throws RangeError when one of the cars cannot stand on its springs
 */
export function mapError(of: MapOf): number {
  const { carAt } = blendOf(of);
  let worst = 0;
  for (const y of placesBetween(of.up)) {
    for (const x of placesBetween(of.along)) {
      const blended = carBalance(carAt(x, y), of.driving);
      const { balance } = readMap(of, valueAt(of.along, x), valueAt(of.up, y));
      const margin = Math.abs(blended.understeerMargin - balance.understeerMargin);
      const turn = Math.abs(blended.lateralAcceleration - balance.lateralAcceleration);
      worst = Math.max(worst, margin, turn);
    }
  }
  return worst;
}

/** Half way between neighbouring knots; for a bar its positions, since it has nothing between. */
function placesBetween(axis: MapAxis): number[] {
  const { at } = knotsOf(axis);
  if (axis.parameter === "barPosition") return [...at];
  return at.slice(1).map((place, i) => (place + (at[i] ?? 0)) / 2);
}

import type { MapAxis } from "./map-axis.js";

/** Places of a map that are worked out, 0–1 along each axis, evenly spread with both ends. */
export interface MapGrid {
  readonly along: readonly number[];
  readonly up: readonly number[];
}

const FINEST = 64;

/**
 * The places at which a map over two levers is worked out: so many a side, but of a bar its positions
 * alone, since it has nothing between.
 */
export function gridOf(
  { along, up }: { readonly along: MapAxis; readonly up: MapAxis },
  side = FINEST,
): MapGrid {
  return { along: placesOf(along, side), up: placesOf(up, side) };
}

function placesOf({ parameter, min, max, step }: MapAxis, side: number): number[] {
  const count = parameter === "barPosition" ? Math.round((max - min) / step) + 1 : side;
  return Array.from({ length: count }, (_, i) => i / (count - 1));
}

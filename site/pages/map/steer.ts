import { type MapAxis, settable, valueAt } from "@rollbook/lib";

const far = 5; // steps of Page Up and Page Down

const moves: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  PageUp: [0, far],
  PageDown: [0, -far],
};

interface Mark {
  readonly x: number;
  readonly y: number;
}

/** Where a key brings the reading mark; nothing for a key that is not the map's. */
export function markAfter(
  key: string,
  { x, y }: Mark,
  along: MapAxis,
  up: MapAxis,
): Mark | undefined {
  if (key === "Home") return { x: along.present, y: up.present };
  const move = Object.hasOwn(moves, key) ? moves[key] : undefined;
  if (move === undefined) return undefined;
  return {
    x: settable(along, x + move[0] * along.step),
    y: settable(up, y + move[1] * up.step),
  };
}

/** The settings nearest to a place on the map, both 0–1. */
export function markAt(place: Mark, along: MapAxis, up: MapAxis): Mark {
  return {
    x: settable(along, valueAt(along, place.x)),
    y: settable(up, valueAt(up, place.y)),
  };
}

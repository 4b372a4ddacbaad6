import type { Point } from "./marks.js";

/** Finer than a screen shows, in the picture's units. */
const tolerance = 0.15;

/**
 * The points that a polyline needs so that every point left out lies within the tolerance of it, up
 * or down. Only runs that go to the right are thinned; outlines that turn back keep their corners.
 */
export function thin(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  let anchor: Point | undefined;
  let last: Point | undefined;
  let steepest = Infinity;
  let shallowest = -Infinity;
  const keep = (point: Point) => {
    kept.push(point);
    anchor = point;
    last = undefined;
    steepest = Infinity;
    shallowest = -Infinity;
  };
  const fits = (from: Point, to: Point): boolean => {
    const run = to[0] - from[0];
    const slope = (to[1] - from[1]) / run;
    return run > 0 && slope >= shallowest && slope <= steepest;
  };
  for (const point of points) {
    if (anchor && last && !fits(anchor, point)) keep(last);
    if (!anchor || point[0] <= anchor[0]) {
      keep(point);
      continue;
    }
    const run = point[0] - anchor[0];
    steepest = Math.min(steepest, (point[1] + tolerance - anchor[1]) / run);
    shallowest = Math.max(shallowest, (point[1] - tolerance - anchor[1]) / run);
    last = point;
  }
  if (last) kept.push(last);
  return kept;
}

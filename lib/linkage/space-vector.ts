/** A point in space, m: x forward, y to the left of the centre line, z above the ground. */
export interface Point {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const plus = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });

export const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });

export const times = (a: Point, factor: number): Point => ({
  x: a.x * factor,
  y: a.y * factor,
  z: a.z * factor,
});

export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y + a.z * b.z;

export const cross = (a: Point, b: Point): Point => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});

const length = (a: Point): number => Math.hypot(a.x, a.y, a.z);

export const unit = (a: Point): Point => times(a, 1 / length(a));

/** What is left of a vector without its part along a unit vector. */
export const without = (a: Point, direction: Point): Point =>
  minus(a, times(direction, dot(a, direction)));

/** Turns a vector about an axis by the axis' length, rad, right-handed. – Rodrigues 1840 */
export function rotate(a: Point, rotation: Point): Point {
  const angle = length(rotation);
  if (angle === 0) return a;
  const axis = times(rotation, 1 / angle);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const along = times(axis, dot(axis, a) * (1 - c));
  return plus(plus(times(a, c), times(cross(axis, a), s)), along);
}

import { Refusal } from "../refusal.js";

/** A point of the front view: y to the left of the car's centre line, z up, both in metres. */
export interface FrontViewPoint {
  readonly y: number;
  readonly z: number;
}

/** A straight line: the points whose product with the unit normal is the offset, m. */
export interface FrontViewLine {
  readonly normal: FrontViewPoint;
  readonly offset: number;
}

/** Where two lines meet (null when parallel), and the unit vector that leads there. */
export interface Meeting {
  readonly point: FrontViewPoint | null;
  readonly toward: FrontViewPoint;
}

const PARALLEL = 1e-9; // rad: lines a metre apart then meet a million kilometres away

export const plus = (a: FrontViewPoint, b: FrontViewPoint): FrontViewPoint => ({
  y: a.y + b.y,
  z: a.z + b.z,
});

export const minus = (a: FrontViewPoint, b: FrontViewPoint): FrontViewPoint => ({
  y: a.y - b.y,
  z: a.z - b.z,
});

export const times = (a: FrontViewPoint, factor: number): FrontViewPoint => ({
  y: a.y * factor,
  z: a.z * factor,
});

export const dot = (a: FrontViewPoint, b: FrontViewPoint): number => a.y * b.y + a.z * b.z;

export const cross = (a: FrontViewPoint, b: FrontViewPoint): number => a.y * b.z - a.z * b.y;

export const distance = (a: FrontViewPoint, b: FrontViewPoint): number =>
  Math.hypot(a.y - b.y, a.z - b.z);

export const unit = (a: FrontViewPoint): FrontViewPoint => times(a, 1 / Math.hypot(a.y, a.z));

/** Turns a vector from y towards z (left side up) by an angle, rad. */
export function turn(a: FrontViewPoint, angle: number): FrontViewPoint {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { y: c * a.y - s * a.z, z: s * a.y + c * a.z };
}

/** The line through a point along a direction. */
export function lineAlong(point: FrontViewPoint, direction: FrontViewPoint): FrontViewLine {
  const normal = turn(unit(direction), Math.PI / 2);
  return { normal, offset: dot(normal, point) };
}

/**
 * Where two lines meet, and which way that is from a starting point.
 *
 * Works in homogeneous coordinates, so parallel lines need no division by zero: their meeting
 * point is null and the way towards it is their own direction.
 *
 * @throws Refusal when both are one and the same line, or they meet at the starting point
 */
export function meet(a: FrontViewLine, b: FrontViewLine, from: FrontViewPoint): Meeting {
  const w = cross(a.normal, b.normal); // sine of the angle between the lines
  const y = a.offset * b.normal.z - b.offset * a.normal.z;
  const z = b.offset * a.normal.y - a.offset * b.normal.y;
  const way = times({ y: y - w * from.y, z: z - w * from.z }, w < 0 ? -1 : 1);
  if (Math.hypot(way.y, way.z) < 1e-12)
    throw new Refusal("lines-alike", "The two lines are the same, or meet at the contact patch.");
  const point = Math.abs(w) < PARALLEL ? null : { y: y / w, z: z / w };
  return { point, toward: unit(way) };
}

import { cross, type Point, plus, rotate, times } from "./space-vector.js";

/** Place and direction of a stiff body against its design position. */
export interface Pose {
  /** Where the unit vectors along x, y and z of the design point now. */
  readonly x: Point;
  readonly y: Point;
  readonly z: Point;
  /** Where the origin of the design is now. */
  readonly origin: Point;
}

/** The design position itself. */
export const atDesign: Pose = {
  x: { x: 1, y: 0, z: 0 },
  y: { x: 0, y: 1, z: 0 },
  z: { x: 0, y: 0, z: 1 },
  origin: { x: 0, y: 0, z: 0 },
};

/** Where a direction of the body points after its motion. */
export const turned = (pose: Pose, a: Point): Point =>
  plus(plus(times(pose.x, a.x), times(pose.y, a.y)), times(pose.z, a.z));

/** Where a point of the body is after its motion. */
export const moved = (pose: Pose, a: Point): Point => plus(turned(pose, a), pose.origin);

/** A small motion of a stiff body: velocity of the point at the origin, and rotation. */
export interface Twist {
  readonly velocity: Point;
  readonly rotation: Point;
}

/** The pose after a small motion; the body stays stiff however large it is. */
export function step(pose: Pose, { velocity, rotation }: Twist): Pose {
  return {
    x: rotate(pose.x, rotation),
    y: rotate(pose.y, rotation),
    z: rotate(pose.z, rotation),
    origin: plus(rotate(pose.origin, rotation), velocity),
  };
}

/** Velocity of a point that moves with the body. */
export const velocityAt = (twist: Twist, point: Point): Point =>
  plus(twist.velocity, cross(twist.rotation, point));

/** Six numbers whose product with a twist is the speed of a point along a direction. */
export function speedRow(point: Point, along: Point): number[] {
  const moment = cross(point, along);
  return [along.x, along.y, along.z, moment.x, moment.y, moment.z];
}

/** A twist from the six unknowns of a linear system. */
export function twistFrom(six: readonly number[]): Twist {
  const [x = 0, y = 0, z = 0, p = 0, q = 0, r = 0] = six;
  return { velocity: { x, y, z }, rotation: { x: p, y: q, z: r } };
}

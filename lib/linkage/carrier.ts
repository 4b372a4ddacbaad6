import { cross, minus, type Point, unit } from "./space-vector.js";

/** A stiff link with a ball joint at each end. */
export interface Link {
  readonly body: Point;
  readonly carrier: Point;
  /** Distance between the joints, m; it stays as it is when the body joint is moved by a rack. */
  readonly length: number;
}

/** A strut: the mount on the body stays on a line that belongs to the carrier. */
export interface Slider {
  readonly mount: Point;
  readonly foot: Point;
  /** Two unit vectors of the carrier, square to its line. */
  readonly square: readonly [Point, Point];
}

/** A wheel as a thin disc that touches the ground z = 0 in the design position. */
export interface Wheel {
  readonly centre: Point;
  /** Unit vector along the axis of the wheel, towards the left of the car. */
  readonly axis: Point;
  readonly radius: number;
  readonly side: 1 | -1;
}

/**
 * What carries one wheel (an upright) or two (a beam), and what holds it to the body.
 *
 * Links, two for each slider, and one ground under each wheel must add up to six: then its
 * place is fixed.
 */
export interface Carrier {
  readonly links: readonly Link[];
  readonly sliders: readonly Slider[];
  readonly wheels: readonly Wheel[];
}

/** A link from its two joints in the design position. */
export function link(body: Point, carrier: Point): Link {
  const { x, y, z } = minus(body, carrier);
  return { body, carrier, length: Math.hypot(x, y, z) };
}

/** A strut from its top mount and any point of its axis on the upright. */
export function slider(mount: Point, foot: Point): Slider {
  const axis = unit(minus(mount, foot));
  const first = unit(cross(axis, { x: 1, y: 0, z: 0 }));
  return { mount, foot, square: [first, cross(axis, first)] };
}

/**
 * A wheel from its centre, camber (rad, > 0 top leans out) and toe (rad, > 0 front points in).
 */
export function wheel(centre: Point, camber: number, toe: number): Wheel {
  const side = centre.y > 0 ? 1 : -1;
  const [lean, steer] = [-side * camber, -side * toe];
  const axis = {
    x: -Math.cos(lean) * Math.sin(steer),
    y: Math.cos(lean) * Math.cos(steer),
    z: Math.sin(lean),
  };
  return { centre, axis, radius: centre.z / Math.cos(lean), side };
}

import type { Point } from "../marks.js";
import type { SeenAxle } from "./seen-axle.js";

/** How much larger than life angles and bumps are drawn. */
export const ENLARGED = 3;

/** m, half the width of a tyre */
export const TYRE = 0.1;

/** A side of the axle: −1 left, 1 right. */
export interface Corner {
  readonly side: -1 | 1;
  readonly load: number;
  /** m of the wheel centre above the road, enlarged as angles are */
  readonly hub: number;
  /** m of the road under the wheel, enlarged too */
  readonly road: number;
}

export function cornersOf({ tyreAngle, track, wheelHeight, load, bump }: SeenAxle): Corner[] {
  const sinks = (ENLARGED * tyreAngle * track) / 2;
  const [left, right] = [ENLARGED * (bump?.left ?? 0), ENLARGED * (bump?.right ?? 0)];
  return [
    { side: -1, load: load.left, hub: wheelHeight + left + sinks, road: left },
    { side: 1, load: load.right, hub: wheelHeight + right - sinks, road: right },
  ];
}

/** Turns a point of the body about the roll centre. */
export type Lean = (point: Point) => Point;

export function leanOf({ rollAngle, rollCentreHeight: centre, lift = 0 }: SeenAxle): Lean {
  const high = centre + ENLARGED * lift;
  const [cos, sin] = [Math.cos(ENLARGED * rollAngle), Math.sin(ENLARGED * rollAngle)];
  return ([x, z]) => [x * cos + (z - centre) * sin, high + (z - centre) * cos - x * sin];
}

export const between = ([ax, az]: Point, [bx, bz]: Point, share: number): Point => [
  ax + share * (bx - ax),
  az + share * (bz - az),
];

/** The inner side of a wheel, so far above its centre. */
export const inner = ({ side, hub }: Corner, { track }: SeenAxle, up: number): Point => [
  side * (track / 2 - TYRE),
  hub + up,
];

const DAMPER_INSIDE = 0.3; // of the arm, inside the spring

/** Where spring, damper and bar take hold of what carries the wheel: the spring as far out as it moves with the wheel. */
export function holds(corner: Corner, axle: SeenAxle, lean: Lean) {
  const low = inner(corner, axle, axle.isBeam ? 0 : -0.1);
  const inside: Point = axle.isBeam
    ? [0, (corner.hub + axle.wheelHeight) / 2]
    : lean([corner.side * 0.24, axle.wheelHeight - 0.1]);
  const out = Math.max(0.5, Math.min(0.88, axle.springRatio));
  return {
    ...{ low, inside },
    ...{ spring: between(inside, low, out), damper: between(inside, low, out - DAMPER_INSIDE) },
  };
}

const ROOF = 1.16; // m

/** Where a hand takes hold of the body to lean it, and of the right wheel to push it up. */
export const roofOf = (axle: SeenAxle): Point => leanOf(axle)([0, ROOF]);
export function hubOf(axle: SeenAxle): Point {
  const right = cornersOf(axle)[1];
  return [axle.track / 2, right?.hub ?? axle.wheelHeight];
}

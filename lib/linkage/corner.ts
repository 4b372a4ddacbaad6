import { requireInRange } from "../check.js";
import { type Carrier, link, slider, wheel } from "./carrier.js";
import type { Point } from "./space-vector.js";

/** What every independent suspension has: wheel, lower wishbone and toe link. */
interface CornerShared {
  readonly wheelCentre: Point;
  /** Camber in the design position, rad, > 0 when the top leans away from the car. */
  readonly camber: number;
  /** Toe in the design position, rad, > 0 when the front of the wheel points to the middle. */
  readonly toe: number;
  /** Lower wishbone: both joints on the body, and the one on the upright. */
  readonly lowerFront: Point;
  readonly lowerRear: Point;
  readonly lowerOuter: Point;
  /** Toe link or tie rod: joint on the body or rack, and on the upright. */
  readonly toeInner: Point;
  readonly toeOuter: Point;
}

/** Double wishbone. Left corner: wheel at y > 0; right corner: y < 0. */
export interface DoubleWishboneCorner extends CornerShared {
  readonly kind: "double wishbone";
  readonly upperFront: Point;
  readonly upperRear: Point;
  readonly upperOuter: Point;
}

/** Strut with a lower wishbone. */
export interface StrutCorner extends CornerShared {
  readonly kind: "strut";
  /** Top mount on the body. */
  readonly strutTop: Point;
  /** Any point of the strut's axis that belongs to the upright. */
  readonly strutFoot: Point;
}

/** One independently sprung wheel and all its joints. */
export type Corner = DoubleWishboneCorner | StrutCorner;

/**
 * The carrier of a corner: five constraints hold the upright, the sixth is the ground.
 *
 * @param corner - joints in the design position, ground at z = 0
 * @param rackTravel - the rack moves the toe link's inner joint by this, m, > 0 to the left
 * @throws Refusal naming the point or angle out of range
 */
export function cornerCarrier(corner: Corner, rackTravel = 0): Carrier {
  requireCorner(corner);
  requireInRange("rackTravel", rackTravel, -0.15, 0.15, "m");
  const { lowerFront, lowerRear, lowerOuter, toeInner, toeOuter } = corner;
  const toeLink = link(toeInner, toeOuter);
  const steered = { ...toeInner, y: toeInner.y + rackTravel };
  return {
    links: [
      link(lowerFront, lowerOuter),
      link(lowerRear, lowerOuter),
      { ...toeLink, body: steered },
      ...upperLinks(corner),
    ],
    sliders: corner.kind === "strut" ? [slider(corner.strutTop, corner.strutFoot)] : [],
    wheels: [wheel(corner.wheelCentre, corner.camber, corner.toe)],
  };
}

function upperLinks(corner: Corner) {
  if (corner.kind === "strut") return [];
  const { upperFront, upperRear, upperOuter } = corner;
  return [link(upperFront, upperOuter), link(upperRear, upperOuter)];
}

/** The corner of the other side of the car: every y with the opposite sign. */
export function mirrorCorner<Kind extends Corner>(corner: Kind): Kind {
  const entries = Object.entries(corner).map(([name, value]) => [
    name,
    typeof value === "object" ? { ...value, y: -value.y } : value,
  ]);
  return Object.fromEntries(entries) as Kind;
}

function requireCorner(corner: Corner): void {
  for (const [name, value] of Object.entries(corner)) {
    if (typeof value === "number") requireInRange(name, value, -0.3, 0.3, "rad");
    if (typeof value === "object") requirePoint(name, value);
  }
  requireInRange("wheelCentre z", corner.wheelCentre.z, 0.1, 1, "m");
}

/** @throws Refusal when a coordinate of a named point is beyond 5 m */
export function requirePoint(name: string, { x, y, z }: Point): void {
  requireInRange(`${name} x`, x, -5, 5, "m");
  requireInRange(`${name} y`, y, -5, 5, "m");
  requireInRange(`${name} z`, z, -5, 5, "m");
}

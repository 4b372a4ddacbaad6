import { requireInRange } from "../check.js";
import { distance, type FrontViewPoint, minus, plus, turn } from "./front-view-vector.js";

/** What every suspension carries: a wheel, as a thin disc from its centre to the ground. */
interface FrontViewWheel {
  /** Centre of the wheel. */
  readonly wheelCentre: FrontViewPoint;
  /** Where the wheel stands on the ground: a point of the upright. */
  readonly contactPatch: FrontViewPoint;
  /** Where the lower arm turns on the body. */
  readonly lowerInner: FrontViewPoint;
  /** Where the lower arm carries the upright. */
  readonly lowerOuter: FrontViewPoint;
}

/** Two arms seen from the front. Left side: y of the wheel above zero; right side: below. */
export interface FrontViewDoubleWishbone extends FrontViewWheel {
  readonly kind: "double wishbone";
  /** Where the upper arm turns on the body. */
  readonly upperInner: FrontViewPoint;
  /** Where the upper arm holds the upright. */
  readonly upperOuter: FrontViewPoint;
}

/** A lower arm and a strut: the upright slides along the line from the foot to the top mount. */
export interface FrontViewStrut extends FrontViewWheel {
  readonly kind: "strut";
  /** Top mount of the strut, a point of the body. */
  readonly strutTop: FrontViewPoint;
  /** Any point of the strut's axis that belongs to the upright. */
  readonly strutFoot: FrontViewPoint;
}

/** One corner of an axle in the front view, wheel on the left (y > 0) or right (y < 0). */
export type FrontViewLinkage = FrontViewDoubleWishbone | FrontViewStrut;

/** The same linkage with every point put through a function. */
export function mapFrontView<Linkage extends FrontViewLinkage>(
  linkage: Linkage,
  change: (point: FrontViewPoint, name: string) => FrontViewPoint,
): Linkage {
  const entries = Object.entries(linkage).map(([name, value]) =>
    typeof value === "string" ? [name, value] : [name, change(value, name)],
  );
  return Object.fromEntries(entries) as Linkage;
}

/** The linkage of the other side of the car: every y with the opposite sign. */
export function mirrorFrontView<Linkage extends FrontViewLinkage>(linkage: Linkage): Linkage {
  return mapFrontView(linkage, ({ y, z }) => ({ y: -y, z }));
}

/** The linkage turned about the origin (rad, > 0 lifts the left side), then moved up (m). */
export function placeFrontView<Linkage extends FrontViewLinkage>(
  linkage: Linkage,
  rollAngle: number,
  heave: number,
): Linkage {
  return mapFrontView(linkage, (point) => plus(turn(point, rollAngle), { y: 0, z: heave }));
}

/** +1 for a wheel on the left of the car, −1 for a wheel on the right. */
export function sideOf(linkage: FrontViewLinkage): 1 | -1 {
  return linkage.contactPatch.y > 0 ? 1 : -1;
}

/**
 * Camber of the wheel against the z axis, rad: above zero when its top leans away from the car.
 */
export function frontViewCamber(linkage: FrontViewLinkage): number {
  const up = minus(linkage.wheelCentre, linkage.contactPatch);
  return Math.atan2(sideOf(linkage) * up.y, up.z);
}

/**
 * Checks the points of a linkage and passes it through.
 *
 * @throws Refusal naming the point that is missing, beyond 5 m, or too near its partner
 */
export function requireFrontView<Linkage extends FrontViewLinkage>(linkage: Linkage): Linkage {
  mapFrontView(linkage, (point, name) => {
    requireInRange(`${name} y`, point.y, -5, 5, "m");
    requireInRange(`${name} z`, point.z, -5, 5, "m");
    return point;
  });
  requireInRange(
    "contactPatch distance from the centre line",
    Math.abs(linkage.contactPatch.y),
    0.1,
    5,
    "m",
  );
  for (const [name, a, b] of frontViewMembers(linkage))
    requireInRange(`length of the ${name}`, distance(a, b), 0.01, 5, "m");
  return linkage;
}

/** The members one would draw or measure: name and both ends of each. */
export function frontViewMembers(
  linkage: FrontViewLinkage,
): (readonly [string, FrontViewPoint, FrontViewPoint])[] {
  const { lowerInner, lowerOuter, wheelCentre, contactPatch } = linkage;
  const shared = [
    ["lower arm", lowerInner, lowerOuter],
    ["wheel radius", contactPatch, wheelCentre],
  ] as const;
  if (linkage.kind === "strut") return [...shared, ["strut", linkage.strutFoot, linkage.strutTop]];
  return [
    ...shared,
    ["upper arm", linkage.upperInner, linkage.upperOuter],
    ["upright", lowerOuter, linkage.upperOuter],
  ];
}

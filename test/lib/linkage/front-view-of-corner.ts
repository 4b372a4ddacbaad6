import type { Corner } from "../../../lib/linkage/corner.js";
import type { FrontViewLinkage } from "../../../lib/linkage/front-view.js";
import type { FrontViewPoint } from "../../../lib/linkage/front-view-vector.js";
import { minus, type Point, plus, times } from "../../../lib/linkage/space-vector.js";
import { Refusal } from "../../../lib/refusal.js";

/**
 * The front view of a corner in space: its linkage cut by the plane across the car through the
 * wheel centre.
 *
 * Each wishbone becomes one arm: from where its pivot axis runs through the plane to where the
 * parallel through its outer joint does. Instant centre and roll centre are exactly those of the
 * corner when its pivots are inclined alike, and near them otherwise: use it to draw, and
 * `standAxle` to calculate.
 *
 * @throws Refusal when a pivot axis lies square to the car's length
 */
export function frontViewOf(corner: Corner): FrontViewLinkage {
  const { lowerFront, lowerRear, lowerOuter, wheelCentre } = corner;
  const x = wheelCentre.x;
  const [lowerInner, lowerEnd] = armInPlane(lowerFront, lowerRear, lowerOuter, x);
  const shared = {
    lowerInner,
    lowerOuter: lowerEnd,
    wheelCentre: across(wheelCentre),
    contactPatch: contactPatchOf(corner),
  };
  if (corner.kind === "strut") {
    const { strutTop, strutFoot } = corner;
    return { kind: "strut", ...shared, strutTop: across(strutTop), strutFoot: across(strutFoot) };
  }
  const { upperFront, upperRear } = corner;
  const [upperInner, upperOuter] = armInPlane(upperFront, upperRear, corner.upperOuter, x);
  return { kind: "double wishbone", ...shared, upperInner, upperOuter };
}

function contactPatchOf({ wheelCentre, camber }: Corner): FrontViewPoint {
  const side = wheelCentre.y > 0 ? 1 : -1;
  return { y: wheelCentre.y - side * wheelCentre.z * Math.tan(camber), z: 0 };
}

/** Where the pivot axis of a wishbone, and its parallel through the outer joint, cross a plane. */
function armInPlane(front: Point, rear: Point, outer: Point, x: number) {
  const axis = minus(front, rear);
  if (Math.abs(axis.x) < 1e-3)
    throw new Refusal(
      "joints-in-one-plane",
      "A wishbone needs joints apart along the car to have a front view.",
    );
  const cut = (from: Point) => across(plus(from, times(axis, (x - from.x) / axis.x)));
  return [cut(rear), cut(outer)] as const;
}

const across = ({ y, z }: Point): FrontViewPoint => ({ y, z });

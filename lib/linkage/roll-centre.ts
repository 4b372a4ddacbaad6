import { Refusal } from "../refusal.js";
import { type FrontViewLinkage, sideOf } from "./front-view.js";
import {
  dot,
  type FrontViewLine,
  type FrontViewPoint,
  lineAlong,
  meet,
  minus,
  plus,
  times,
  turn,
  unit,
} from "./front-view-vector.js";
import { instantCentre } from "./instant-centre.js";

const ON_THE_GROUND = 1e-6; // m

/** Roll centre of an axle, as a point of the drawing and as a height for the forces. */
export interface RollCentre {
  /**
   * Where the lines from each contact patch to its instant centre cross, m, in the frame of the
   * linkages; null when they are parallel. It may run far sideways when both lines are flat.
   */
  readonly point: FrontViewPoint | null;
  /**
   * Height above the ground, m, with the side force split evenly between both wheels: half of
   * leftHeight plus half of rightHeight. Steady where the point is not.
   */
  readonly height: number;
  /** Height at which the left wheel's line passes the middle of the track, m above ground. */
  readonly leftHeight: number;
  /** The same for the right wheel. */
  readonly rightHeight: number;
}

/**
 * Roll centre of an axle from the linkages of both its sides, in any position.
 *
 * Each height is half the track times the slope of the line from patch to instant centre; it
 * uses the direction of the line only, so parallel arms are no special case.
 * The ground is the line through both contact patches. – SAE J670; Milliken 1995, ch. 17
 *
 * @param left - linkage with its wheel on the left (y > 0)
 * @param right - linkage with its wheel on the right (y < 0), in the same frame
 * @throws Refusal when a side is on the wrong side or its instant centre is straight above
 */
export function rollCentre(left: FrontViewLinkage, right: FrontViewLinkage): RollCentre {
  if (sideOf(left) !== 1 || sideOf(right) !== -1)
    throw new Refusal(
      "links-left-then-right",
      "rollCentre needs the left linkage (y above 0) and then the right one.",
    );
  const leftHeight = heightAtMiddle(left, right.contactPatch);
  const rightHeight = heightAtMiddle(right, left.contactPatch);
  const height = (leftHeight + rightHeight) / 2;
  const flat = Math.max(Math.abs(leftHeight), Math.abs(rightHeight)) < ON_THE_GROUND;
  const point = flat ? middleOfTrack(left, right) : crossing(left, right);
  return { point, height, leftHeight, rightHeight };
}

function heightAtMiddle(linkage: FrontViewLinkage, otherPatch: FrontViewPoint): number {
  const across = minus(otherPatch, linkage.contactPatch); // along the ground to the other wheel
  const upward = turn(unit(across), sideOf(linkage) * (-Math.PI / 2));
  const { toward } = instantCentre(linkage);
  const along = dot(toward, unit(across));
  if (Math.abs(along) < 1e-6)
    throw new Refusal(
      "no-roll-centre",
      "The instant centre is straight above the contact patch: no roll centre.",
    );
  return (dot(toward, upward) / along) * (Math.hypot(across.y, across.z) / 2); // h = (t/2)·dy/dz
}

function crossing(left: FrontViewLinkage, right: FrontViewLinkage): FrontViewPoint | null {
  return meet(patchLine(left), patchLine(right), middleOfTrack(left, right)).point;
}

function patchLine(linkage: FrontViewLinkage): FrontViewLine {
  return lineAlong(linkage.contactPatch, instantCentre(linkage).toward);
}

function middleOfTrack(left: FrontViewLinkage, right: FrontViewLinkage): FrontViewPoint {
  return times(plus(left.contactPatch, right.contactPatch), 0.5);
}

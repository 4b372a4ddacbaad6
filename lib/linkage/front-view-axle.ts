import { requireInRange } from "../check.js";
import {
  type FrontViewLinkage,
  frontViewCamber,
  mirrorFrontView,
  placeFrontView,
  requireFrontView,
} from "./front-view.js";
import { turn } from "./front-view-vector.js";
import { solveLowerArm } from "./move-front-view.js";
import { type RollCentre, rollCentre } from "./roll-centre.js";

/** How the body stands over the ground against its design position. */
export interface BodyPosition {
  /** Rise of the body at the centre line, m, > 0 up (the wheels droop), −0.3 … 0.3. */
  readonly heave?: number;
  /** Roll angle, rad, > 0 right side down, −0.3 … 0.3. */
  readonly rollAngle?: number;
}

/** One corner of an axle over the ground. */
export interface FrontViewCorner {
  /** All points in the frame of the ground (z = 0 is the road). */
  readonly linkage: FrontViewLinkage;
  /** Rise of the contact patch against the body, m, > 0 in bump. */
  readonly wheelTravel: number;
  /** Camber against the road, rad, > 0 when the top leans away from the car. */
  readonly camber: number;
  /** Camber against the road minus that of the design position, rad. */
  readonly camberChange: number;
}

/** An axle seen from the front, standing on the road. */
export interface FrontViewAxle {
  readonly left: FrontViewCorner;
  readonly right: FrontViewCorner;
  /** Distance between both contact patches, m. */
  readonly track: number;
  readonly rollCentre: RollCentre;
}

/**
 * Stands an axle on the road with its body moved up and rolled, both wheels on the ground.
 *
 * The real linkages of both sides are solved, so roll centre, camber and track migrate as they do
 * on the car. Sideways the middle of the body at ground level stays at y = 0.
 *
 * @param left - left linkage in the design position, contact patch at z = 0
 * @param position - heave and roll of the body, both 0 when left out
 * @param right - right linkage; the mirror image of the left one when left out
 * @throws Refusal when a value is out of range or the arms cannot reach
 * @example
 * const mm = (y, z) => ({ y: y / 1000, z: z / 1000 });
 * const wheel = { wheelCentre: mm(750, 300), contactPatch: mm(750, 0) };
 * const upper = { upperInner: mm(400, 400), upperOuter: mm(650, 420) };
 * const lower = { lowerInner: mm(350, 180), lowerOuter: mm(700, 160) };
 * const arms = { kind: "double wishbone", ...upper, ...lower, ...wheel };
 * frontViewAxle(arms).rollCentre.height // → 0.10253, by two independent methods: 102.5316 mm
 */
export function frontViewAxle(
  left: FrontViewLinkage,
  position: BodyPosition = {},
  right: FrontViewLinkage = mirrorFrontView(left),
): FrontViewAxle {
  const heave = requireInRange("heave", position.heave ?? 0, -0.3, 0.3, "m");
  const rollAngle = requireInRange("rollAngle", position.rollAngle ?? 0, -0.3, 0.3, "rad");
  const corners = {
    left: standOnRoad(left, heave, rollAngle),
    right: standOnRoad(right, heave, rollAngle),
  };
  const track = corners.left.linkage.contactPatch.y - corners.right.linkage.contactPatch.y;
  return { ...corners, track, rollCentre: rollCentre(corners.left.linkage, corners.right.linkage) };
}

function standOnRoad(design: FrontViewLinkage, heave: number, rollAngle: number): FrontViewCorner {
  requireFrontView(design);
  requireInRange("contactPatch z in the design position", design.contactPatch.z, -1e-6, 1e-6, "m");
  const inBody = solveLowerArm(design, (patch) => turn(patch, rollAngle).z + heave);
  const linkage = placeFrontView(inBody, rollAngle, heave);
  const camber = frontViewCamber(linkage);
  return {
    linkage,
    wheelTravel: inBody.contactPatch.z - design.contactPatch.z,
    camber,
    camberChange: camber - frontViewCamber(design),
  };
}

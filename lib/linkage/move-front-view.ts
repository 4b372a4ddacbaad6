import { requireInRange } from "../check.js";
import {
  type FrontViewLinkage,
  frontViewCamber,
  mapFrontView,
  requireFrontView,
} from "./front-view.js";
import type { FrontViewPoint } from "./front-view-vector.js";
import { outOfReach, uprightMotion } from "./upright-motion.js";

const BODY_POINTS = ["lowerInner", "upperInner", "strutTop"];
const MOST_ARM_ANGLE = 1.2; // rad

/** A linkage after wheel travel, and what the travel did to the wheel. */
export interface MovedFrontView<Linkage extends FrontViewLinkage = FrontViewLinkage> {
  /** All points in the new position; those on the body have not moved. */
  readonly linkage: Linkage;
  /** New place of the contact patch, m. */
  readonly contactPatch: FrontViewPoint;
  /** Camber against the body after the travel minus before, rad; > 0: top leans out more. */
  readonly camberChange: number;
  /** Sideways path of the contact patch, m, > 0 outwards. */
  readonly halfTrackChange: number;
}

/**
 * Moves the wheel up or down against the body and solves the real four-bar linkage.
 *
 * No small-angle assumption: the arms keep their lengths, a strut its axis in the upright.
 *
 * @param linkage - points in the design position
 * @param wheelTravel - rise of the contact patch against the body, m, > 0 in bump, −0.3 … 0.3
 * @throws Refusal when the arms cannot reach that far
 */
export function moveFrontView<Linkage extends FrontViewLinkage>(
  linkage: Linkage,
  wheelTravel: number,
): MovedFrontView<Linkage> {
  requireFrontView(linkage);
  requireInRange("wheelTravel", wheelTravel, -0.3, 0.3, "m");
  const goal = linkage.contactPatch.z + wheelTravel;
  const moved = solveLowerArm(linkage, (patch) => patch.z - goal);
  return {
    linkage: moved,
    contactPatch: moved.contactPatch,
    camberChange: frontViewCamber(moved) - frontViewCamber(linkage),
    halfTrackChange: Math.abs(moved.contactPatch.y) - Math.abs(linkage.contactPatch.y),
  };
}

/**
 * Turns the lower arm until a condition on the contact patch is met (secant iteration).
 *
 * @param miss - distance of the patch from where it should be, m
 * @throws Refusal when no position of the arms meets it
 */
export function solveLowerArm<Linkage extends FrontViewLinkage>(
  linkage: Linkage,
  miss: (patch: FrontViewPoint) => number,
): Linkage {
  const missAt = (angle: number) => miss(uprightMotion(linkage, angle)(linkage.contactPatch));
  let [earlier, angle] = [0, 1e-3 * Math.sign(linkage.contactPatch.y)];
  let [missEarlier, missNow] = [missAt(earlier), missAt(angle)];
  for (let i = 0; i < 30 && Math.abs(missNow) > 1e-13 && missNow !== missEarlier; i++) {
    const next = angle - (missNow * (angle - earlier)) / (missNow - missEarlier);
    [earlier, missEarlier] = [angle, missNow];
    angle = next;
    missNow = missAt(angle);
  }
  if (!(Math.abs(missNow) < 1e-11 && Math.abs(angle) < MOST_ARM_ANGLE)) throw outOfReach();
  const moved = uprightMotion(linkage, angle);
  return mapFrontView(linkage, (point, name) =>
    BODY_POINTS.includes(name) ? point : moved(point),
  );
}

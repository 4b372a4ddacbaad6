import { Refusal } from "../refusal.js";
import type { FrontViewDoubleWishbone, FrontViewLinkage, FrontViewStrut } from "./front-view.js";
import { cross, distance, type FrontViewPoint, minus, plus, turn } from "./front-view-vector.js";

/** Moves a point of the upright as the lower arm turns by an angle (rad, > 0 from y towards z). */
export function uprightMotion(linkage: FrontViewLinkage, angle: number) {
  const { lowerInner, lowerOuter } = linkage;
  const joint = plus(lowerInner, turn(minus(lowerOuter, lowerInner), angle));
  const rotation =
    linkage.kind === "strut" ? strutRotation(linkage, joint) : uprightRotation(linkage, joint);
  return (point: FrontViewPoint) => plus(joint, turn(minus(point, lowerOuter), rotation));
}

/** How far the upright turns when its lower joint is at a given place: the upper arm decides. */
function uprightRotation(linkage: FrontViewDoubleWishbone, joint: FrontViewPoint): number {
  const { upperInner, upperOuter, lowerOuter } = linkage;
  const [arm, upright] = [distance(upperInner, upperOuter), distance(lowerOuter, upperOuter)];
  const span = distance(joint, upperInner);
  const corner = Math.acos(
    (upright ** 2 + span ** 2 - arm ** 2) / (2 * upright * span), // law of cosines
  );
  const bend = Math.sign(cross(minus(upperInner, lowerOuter), minus(upperOuter, lowerOuter)));
  const now = turn(minus(upperInner, joint), bend * corner);
  return angleBetween(minus(upperOuter, lowerOuter), now);
}

/** The same for a strut: its axis keeps its distance from the joint and runs through the mount. */
function strutRotation(linkage: FrontViewStrut, joint: FrontViewPoint): number {
  const { strutTop, strutFoot, lowerOuter } = linkage;
  const axis = minus(strutTop, strutFoot);
  const offset = cross(axis, minus(lowerOuter, strutTop)) / Math.hypot(axis.y, axis.z);
  const lean = (from: FrontViewPoint) => Math.asin(offset / distance(from, strutTop));
  const swing = angleBetween(minus(strutTop, lowerOuter), minus(strutTop, joint));
  return swing + lean(joint) - lean(lowerOuter);
}

/** Angle from one vector to another, rad, > 0 from y towards z. */
function angleBetween(from: FrontViewPoint, to: FrontViewPoint): number {
  const angle = Math.atan2(cross(from, to), from.y * to.y + from.z * to.z);
  if (Number.isNaN(angle)) throw outOfReach();
  return angle;
}

export function outOfReach(): Refusal {
  return new Refusal(
    "travel-out-of-reach",
    "The travel is more than the arms can reach: choose less travel.",
  );
}

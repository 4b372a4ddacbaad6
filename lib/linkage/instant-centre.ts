import { type FrontViewLinkage, sideOf } from "./front-view.js";
import {
  type FrontViewLine,
  type FrontViewPoint,
  lineAlong,
  type Meeting,
  meet,
  minus,
  turn,
} from "./front-view-vector.js";

/** Where the wheel turns about, seen from the front. */
export interface InstantCentre {
  /** The instant centre, m; null when the arms are parallel (it is then infinitely far away). */
  readonly point: FrontViewPoint | null;
  /** Unit vector from the contact patch towards it; with parallel arms, along them. */
  readonly toward: FrontViewPoint;
}

/**
 * Instant centre of one wheel: the point about which the upright turns at this moment.
 *
 * Wishbones: where the lines of both arms meet. Strut: where the line of the lower arm meets
 * the line through the top mount at right angles to the strut. – Gillespie 1992, ch. 7
 *
 * @throws Refusal when it falls on the contact patch or both lines are the same
 * @example
 * const mm = (y, z) => ({ y: y / 1000, z: z / 1000 });
 * const wheel = { wheelCentre: mm(750, 300), contactPatch: mm(750, 0) };
 * const upper = { upperInner: mm(400, 400), upperOuter: mm(650, 420) };
 * const lower = { lowerInner: mm(350, 180), lowerOuter: mm(700, 160) };
 * const arms = { kind: "double wishbone", ...upper, ...lower, ...wheel };
 * instantCentre(arms).point.y // → -1.225, by two independent methods
 */
export function instantCentre(linkage: FrontViewLinkage): InstantCentre {
  const { lowerInner, lowerOuter, contactPatch } = linkage;
  const lower = lineAlong(lowerInner, minus(lowerOuter, lowerInner));
  return inward(meet(upperLine(linkage), lower, contactPatch), sideOf(linkage));
}

function upperLine(linkage: FrontViewLinkage): FrontViewLine {
  if (linkage.kind === "strut") {
    const axis = minus(linkage.strutTop, linkage.strutFoot);
    return lineAlong(linkage.strutTop, turn(axis, Math.PI / 2));
  }
  return lineAlong(linkage.upperInner, minus(linkage.upperOuter, linkage.upperInner));
}

/** With parallel arms both ways along them are right: take the one towards the car. */
function inward({ point, toward }: Meeting, side: number): InstantCentre {
  if (point !== null || toward.y * side < 0) return { point, toward };
  return { point, toward: { y: -toward.y, z: -toward.z } };
}

/**
 * Length of the front-view swing arm, m: how far inboard of the contact patch the instant
 * centre lies, measured sideways. Infinity with parallel arms, below zero when outboard.
 *
 * @example
 * frontViewSwingArm(arms) // → 1.975, by hand: 0.75 + 1.225
 */
export function frontViewSwingArm(linkage: FrontViewLinkage): number {
  const { point } = instantCentre(linkage);
  if (point === null) return Number.POSITIVE_INFINITY;
  return (linkage.contactPatch.y - point.y) * sideOf(linkage);
}

/**
 * Camber gain, rad/m: camber lost (top leaning in) for each metre of bump at this moment.
 *
 * Zero with parallel arms. A car file and the rates of a corner in space give the change of camber instead,
 * which has the other sign. Camber against the ground in roll follows as
 * (1 − half track × gain) of the roll angle.
 *
 * @example
 * camberGain(arms) // → 0.5063, by hand: 1/1.975
 */
export function camberGain(linkage: FrontViewLinkage): number {
  return 1 / frontViewSwingArm(linkage); // the upright turns about the instant centre
}

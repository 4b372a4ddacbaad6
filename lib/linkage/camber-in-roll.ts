import type { FrontViewLinkage } from "./front-view.js";
import { camberGain } from "./instant-centre.js";

/**
 * How much of the body's roll the outer wheel leans out against the road, rad per rad.
 *
 * 1 for wheels that keep their angle to the body, 0 for wheels that stay upright. For small angles
 * about the position given, tyres rigid: 1 − (t/2)·gain.
 *
 * @example
 * const mm = (y, z) => ({ y: y / 1000, z: z / 1000 });
 * const wheel = { wheelCentre: mm(750, 300), contactPatch: mm(750, 0) };
 * const upper = { upperInner: mm(400, 400), upperOuter: mm(650, 420) };
 * const lower = { lowerInner: mm(350, 180), lowerOuter: mm(700, 160) };
 * const arms = { kind: "double wishbone", ...upper, ...lower, ...wheel };
 * camberInRoll(arms) // → 0.6203, by hand: 1 − 0.75/1.975
 */
export function camberInRoll(linkage: FrontViewLinkage): number {
  const halfTrack = Math.abs(linkage.contactPatch.y);
  return 1 - halfTrack * camberGain(linkage); // travel of the outer wheel is (t/2)·φ – Milliken 1995, ch. 17
}

import type { FrontViewLinkage } from "./front-view.js";
import { camberGain } from "./instant-centre.js";

/**
 * How much of the body's roll the outer wheel leans out against the road, rad per rad.
 *
 * 1 for wheels that keep their angle to the body, 0 for wheels that stay upright. For small angles
 * about the position given, tyres rigid: 1 − (t/2)·gain.
 */
export function camberInRoll(linkage: FrontViewLinkage): number {
  const halfTrack = Math.abs(linkage.contactPatch.y);
  return 1 - halfTrack * camberGain(linkage); // travel of the outer wheel is (t/2)·φ – Milliken 1995, ch. 17
}

import type { HandlingAxle } from "./handling-car.js";

/** Bump travel of the outer wheel for each rad of roll, m: only the suspension's part of the roll. */
function bumpPerRoll({ suspensionRollShare, track }: HandlingAxle): number {
  return suspensionRollShare * (track / 2);
}

/**
 * How far both wheels lean to the left for each rad that the body rolls to the right, rad.
 *
 * The body takes independent wheels along, camber gain takes them back; a beam rolls on its tyres
 * only.
 */
export function leanPerRoll(axle: HandlingAxle): number {
  const taken = axle.independent ? 1 : 1 - axle.suspensionRollShare;
  return -taken - axle.camberGain * bumpPerRoll(axle);
}

/** How far both wheels turn to the left for each rad that the body rolls to the right, rad. */
export function steerPerRoll(axle: HandlingAxle): number {
  return axle.toeGain * bumpPerRoll(axle);
}

import type { HandlingAxle } from "./handling-car.js";

/** Share of the roll angle that is between body and wheels while nothing else rolls the axle, 0–1. */
function suspensionShare({ rollStiffness, tyreRollStiffness = Infinity }: HandlingAxle): number {
  if (tyreRollStiffness === Infinity) return 1;
  return tyreRollStiffness / (rollStiffness + tyreRollStiffness);
}

/** Bump travel of the outer wheel for each rad of roll, m: only the suspension's part of the roll. */
function bumpPerRoll(axle: HandlingAxle): number {
  return suspensionShare(axle) * (axle.track / 2);
}

/**
 * How far both wheels lean to the left for each rad that the body rolls to the right, rad.
 *
 * The body takes independent wheels along, camber gain takes them back; a beam rolls on its tyres
 * only, and its links cannot lean its wheels.
 */
export function leanPerRoll(axle: HandlingAxle): number {
  if (!axle.independent) return -(1 - suspensionShare(axle));
  return -1 - axle.camberGain * bumpPerRoll(axle);
}

/**
 * How far both wheels turn to the left for each rad that the body rolls to the right, rad.
 *
 * Of independent wheels the outer one toes in with its bump, the inner one out with its droop; a
 * beam turns as a whole.
 */
export function steerPerRoll(axle: HandlingAxle): number {
  if (!axle.independent) return axle.rollSteer * suspensionShare(axle);
  return axle.toeGain * bumpPerRoll(axle);
}

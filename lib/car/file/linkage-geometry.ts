import { type AxleWheel, type SpaceAxle, standAxle } from "../../linkage/axle-in-space.js";
import type { Axle, AxleGeometry, Car } from "../car.js";

const SMALL_TRAVEL = 1e-3; // m, for the slope of the roll centre's height
const NOTICED = 1e-3; // m

/**
 * Roll centre and wheel guidance that follow from the joints of an axle's links.
 *
 * Gains are those of both wheels rising together, the mean of left and right. A beam turns in roll,
 * when one wheel rises and the other falls, quite otherwise: that is its roll steer.
 *
 * @throws Refusal when a joint is out of range or the links cannot reach
 */
export function geometryOfLinkage(linkage: SpaceAxle): AxleGeometry {
  const { left, right, track, rollCentreHeight } = standAxle(linkage);
  const [inBump, inDroop] = [-SMALL_TRAVEL, SMALL_TRAVEL].map(
    (heave) => standAxle(linkage, { heave }).rollCentreHeight,
  );
  return {
    rollCentreHeight,
    rollCentreMigration: ((inBump ?? 0) - (inDroop ?? 0)) / (2 * SMALL_TRAVEL),
    camberGain: (inHeave(left, "camber") + inHeave(right, "camber")) / 2,
    toeGain: (inHeave(left, "toe") + inHeave(right, "toe")) / 2,
    ...(linkage.kind === "beam axle" && {
      rollSteer: ((toeInRoll(left) + toeInRoll(right)) / 2) * (track / 2),
    }),
  };
}

/** Change of an angle for each metre that both wheels rise, rad/m. */
function inHeave({ own, other }: AxleWheel, angle: "camber" | "toe"): number {
  return own[angle] + (other?.[angle] ?? 0);
}

/** Toe for each metre that this wheel rises and the other falls, rad/m. */
function toeInRoll({ own, other }: AxleWheel): number {
  return own.toe - (other?.toe ?? 0);
}

/** The car with the geometry that its linkages have, and a note where its file said otherwise. */
export function withLinkageGeometry(car: Car): { car: Car; notes: string[] } {
  const [front, rear] = [guided(car.front, "front"), guided(car.rear, "rear")];
  return {
    car: { ...car, front: front.axle, rear: rear.axle },
    notes: [...front.notes, ...rear.notes],
  };
}

function guided(axle: Axle, end: string): { axle: Axle; notes: string[] } {
  if (axle.linkage === undefined) return { axle, notes: [] };
  const geometry = { ...axle.geometry, ...geometryOfLinkage(axle.linkage) };
  const [now, said] = [geometry.rollCentreHeight, axle.geometry.rollCentreHeight];
  const differs = Math.abs(now - said) > NOTICED;
  const note =
    `${end}.geometry.rollCentreHeight follows from the linkage: ` +
    `${now.toFixed(3)} m instead of ${said} m.`;
  return { axle: { ...axle, geometry }, notes: differs ? [note] : [] };
}

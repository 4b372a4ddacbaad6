import { type SpaceAxle, standAxle } from "../../linkage/axle-in-space.js";
import type { Axle, AxleGeometry, Car } from "../car.js";

const SMALL_TRAVEL = 1e-3; // m, for the slope of the roll centre's height
const NOTICED = 1e-3; // m

/** Roll centre and wheel guidance that follow from the joints of an axle's links. */
export function geometryOfLinkage(linkage: SpaceAxle): AxleGeometry {
  const { left, rollCentreHeight } = standAxle(linkage);
  const [inBump, inDroop] = [-SMALL_TRAVEL, SMALL_TRAVEL].map(
    (heave) => standAxle(linkage, { heave }).rollCentreHeight,
  );
  return {
    rollCentreHeight,
    rollCentreMigration: ((inBump ?? 0) - (inDroop ?? 0)) / (2 * SMALL_TRAVEL),
    camberGain: left.own.camber + (left.other?.camber ?? 0),
    toeGain: left.own.toe + (left.other?.toe ?? 0),
  };
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

import { isBeamAxle, meanOf } from "../car/axle.js";
import type { Axle, Car } from "../car/car.js";
import type { Sides } from "../load/wheels.js";
import type { Position } from "./position.js";
import { eachSide } from "./sides.js";

/** Lean of what holds the wheels upright, rad, > 0 to the right: the body, or a beam. */
export function leanOf(car: Car, end: "front" | "rear", position: Position): number {
  const [, , roll = 0, fl = 0, fr = 0, rl = 0, rr = 0] = position;
  const axle = car[end];
  if (!isBeamAxle(axle)) return roll;
  return (end === "front" ? fl - fr : rl - rr) / axle.track;
}

/** Camber of both wheels against the ground, rad: set, gained in travel, leaning with the car. */
export function camberOf(axle: Axle, travel: Sides<number>, lean: number): Sides<number> {
  const gain = axle.geometry.camberGain ?? 0;
  const gaining = gainingTravel(axle, travel);
  return eachSide(
    axle.camber,
    (set, side) => set + gain * gaining[side] + (side === "left" ? -lean : lean),
  );
}

/** Toe of both wheels, rad: set, gained in travel, and turned with a beam that rolls. */
export function toeOf(axle: Axle, travel: Sides<number>): Sides<number> {
  const gain = axle.geometry.toeGain ?? 0;
  const gaining = gainingTravel(axle, travel);
  const turn = isBeamAxle(axle) ? turnOfBeam(axle, travel) : 0;
  return eachSide(
    axle.toe,
    (set, side) => set + gain * gaining[side] + (side === "left" ? -turn : turn),
  );
}

/** Travel of each wheel that changes its camber and toe, m: on a beam, that of both together. */
function gainingTravel(axle: Axle, travel: Sides<number>): Sides<number> {
  if (!isBeamAxle(axle)) return travel;
  const both = meanOf(travel);
  return { left: both, right: both };
}

/** How far a beam has turned to the left, rad, with the body rolled on it. */
function turnOfBeam({ geometry, track }: Axle, { left, right }: Sides<number>): number {
  return ((geometry.rollSteer ?? 0) * (right - left)) / track; // right wheel in bump: right side down
}

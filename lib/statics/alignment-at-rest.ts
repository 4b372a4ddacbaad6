import type { Axle, Car } from "../car/car.js";
import type { Sides } from "../load/wheels.js";
import type { Position } from "./position.js";
import { eachSide } from "./sides.js";

/** Lean of what holds the wheels upright, rad, > 0 to the right: the body, or a beam. */
export function leanOf(car: Car, end: "front" | "rear", position: Position): number {
  const [, , roll = 0, fl = 0, fr = 0, rl = 0, rr = 0] = position;
  const { spring, track } = car[end];
  if (spring.spacing === undefined) return roll;
  return (end === "front" ? fl - fr : rl - rr) / track;
}

/** Camber of both wheels against the ground, rad: set, gained in travel, leaning with the car. */
export function camberOf(
  { camber, geometry }: Axle,
  travel: Sides<number>,
  lean: number,
): Sides<number> {
  const gain = geometry.camberGain ?? 0;
  return eachSide(
    camber,
    (set, side) => set + gain * travel[side] + (side === "left" ? -lean : lean),
  );
}

/** Toe of both wheels, rad: set, and gained in travel. */
export function toeOf({ toe, geometry }: Axle, travel: Sides<number>): Sides<number> {
  const gain = geometry.toeGain ?? 0;
  return eachSide(toe, (set, side) => set + gain * travel[side]);
}

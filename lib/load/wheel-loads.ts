import { requireInRange } from "../check.js";
import { GRAVITY } from "../units.js";
import type { Axles, Wheels } from "./wheels.js";

/**
 * Loads under the four wheels of a car at rest, N.
 *
 * @param car - mass (kg), frontWeightShare (0–1), leftWeightShare (0–1, half when left out; the
 * same on both axles, as on scales with no cross weight set)
 * @throws Refusal when a number is outside its range
 */
export function staticWheelLoads(car: {
  mass: number;
  frontWeightShare: number;
  leftWeightShare?: number;
}): Wheels<number> {
  const W = requireInRange("mass", car.mass, 0, Infinity, "kg") * GRAVITY;
  const front = requireInRange("front weight share", car.frontWeightShare, 0, 1);
  const left = requireInRange("left weight share", car.leftWeightShare ?? 0.5, 0, 1);
  const axle = (share: number) => ({ left: W * share * left, right: W * share * (1 - left) });
  return { front: axle(front), rear: axle(1 - front) };
}

/**
 * Loads under the four wheels of a moving car, N.
 *
 * @param atRest - loads of the car at rest, N
 * @param lateral - load that each axle moves from its left to its right wheel, N
 * @param longitudinal - load moved from the front axle to the rear one, N
 * @returns loads that sum to the loads at rest; a negative load means that a wheel would have to be
 * pulled down, so the transfers asked for are more than the car can do
 */
export function wheelLoads(
  atRest: Wheels<number>,
  lateral: Axles<number>,
  longitudinal = 0,
): Wheels<number> {
  const half = longitudinal / 2;
  return {
    front: {
      left: atRest.front.left - lateral.front - half,
      right: atRest.front.right + lateral.front - half,
    },
    rear: {
      left: atRest.rear.left - lateral.rear + half,
      right: atRest.rear.right + lateral.rear + half,
    },
  };
}

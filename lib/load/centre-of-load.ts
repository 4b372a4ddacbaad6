import { requireInRange } from "../check.js";
import { type Axles, sumOfWheels, type Wheels } from "./wheels.js";

/**
 * The point on the road where one single force would do the work of all four wheel loads.
 *
 * On a stiff car it wanders from below the centre of gravity by h·a/g, away from the acceleration,
 * and the car tips when it leaves the four wheels.
 *
 * @param loads - N under each wheel, above zero in sum
 * @param car - wheelbase and both tracks, m
 * @returns m behind the front axle, and m to the left of the centre line
 * @throws Refusal when the loads do not press on the road
 * @example
 * const loads = { front: { left: 3000, right: 3000 }, rear: { left: 2000, right: 2000 } };
 * const frame = { wheelbase: 2.5, front: { track: 1.5 }, rear: { track: 1.5 } };
 * centreOfLoad(loads, frame).behindFrontAxle // → 1, by hand: 2.5·4000/10 000
 */
export function centreOfLoad(
  loads: Wheels<number>,
  car: { wheelbase: number } & Axles<{ track: number }>,
): { behindFrontAxle: number; leftOfCentre: number } {
  const { front, rear } = loads;
  const sum = requireInRange("sum of the wheel loads", sumOfWheels(loads), 1e-9, Infinity, "N");
  const momentFront = ((front.left - front.right) * car.front.track) / 2;
  const momentRear = ((rear.left - rear.right) * car.rear.track) / 2;
  return {
    behindFrontAxle: ((rear.left + rear.right) * car.wheelbase) / sum, // Σ F·x / Σ F
    leftOfCentre: (momentFront + momentRear) / sum, // Σ F·y / Σ F
  };
}

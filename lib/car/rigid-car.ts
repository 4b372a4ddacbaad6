import type { Car } from "./car.js";
import { totalMassOf } from "./masses.js";

/** A car as one stiff block on its wheels: all that the total load transfer depends on. */
export interface RigidCar {
  /** kg */
  readonly mass: number;
  /** m above the ground */
  readonly centreOfGravityHeight: number;
  /** m, mean of front and rear */
  readonly track: number;
  /** m */
  readonly wheelbase: number;
}

/**
 * The stiff block that a car is when springs, bars and dampers are forgotten.
 *
 * @example
 * rigidCarOf(demoCar).track // → 1.445, by hand: the mean of 1.44 and 1.45
 */
export function rigidCarOf(car: Car): RigidCar {
  const { mass, height } = totalMassOf(car);
  const track = (car.front.track + car.rear.track) / 2; // mean of both – NHTSA rollover ratings
  return { mass, centreOfGravityHeight: height, track, wheelbase: car.wheelbase };
}

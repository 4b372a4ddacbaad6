import { standingCar } from "../balance/standing-car.js";
import type { Car } from "../car/car.js";
import { type Baseline, baselineOf } from "./effect.js";
import { USUAL_SPEED } from "./figures.js";

const baselines = new WeakMap<Car, Map<number, Baseline>>();

/**
 * Where changes of a car start from at a speed, m/s: worked out once, so that what is known of its
 * changes answers the next question too.
 *
 * @param measured - the car whose file gave the heights, as for `restOf`
 */
export function knownBaseline(car: Car, measured: Car = car, speed = USUAL_SPEED): Baseline {
  const ofCar = baselines.get(car) ?? new Map<number, Baseline>();
  const known = ofCar.get(speed);
  const baseline =
    known?.measured === measured ? known : baselineOf(standingCar(car, measured), speed);
  baselines.set(car, ofCar.set(speed, baseline));
  return baseline;
}

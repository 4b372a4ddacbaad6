import type { Car } from "../car/car.js";
import { axleWeightsOf, totalMassOf } from "../car/masses.js";
import { eachAxle, type Wheels } from "../load/wheels.js";
import { GRAVITY } from "../units.js";

/**
 * Loads under the wheels in the state in which the car was measured, N: level, at the heights of
 * its file, with all seat turns at zero.
 *
 * Three equations (weight, front share, left share) do not fix four loads. The file says nothing
 * of cross weight, so both axles are taken to carry the same share on the left.
 */
export function measuredLoadsOf(car: Car): Wheels<number> {
  const { mass, leftOfCentre } = totalMassOf(car);
  const weights = axleWeightsOf(car);
  const arms = weights.front * car.front.track + weights.rear * car.rear.track;
  const leftShare = 0.5 + (mass * GRAVITY * leftOfCentre) / arms; // moments about the centre line
  return eachAxle(weights, (weight) => ({
    left: weight * leftShare,
    right: weight * (1 - leftShare),
  }));
}

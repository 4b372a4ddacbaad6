import { handlingCarOf } from "../../balance/handling-car-of.js";
import type { Car } from "../../car/car.js";
import { distributeLoadTransfer } from "../../load/distribution.js";

const GENTLE = 1; // m/s², all wheels down on any car

/**
 * What the model says of the roll gradient of a car, rad/(m/s²), above 0: the mean of both ends, where
 * the chassis twists.
 *
 * @throws Refusal where the car cannot stand
 */
export function predictedRollGradient(car: Car): number {
  const { rollAngle } = distributeLoadTransfer(handlingCarOf(car), GENTLE);
  return (rollAngle.front + rollAngle.rear) / 2 / GENTLE;
}

import type { CarBalance } from "./car-balance.js";
import { axleDistances, carMass, type HandlingCar } from "./handling-car.js";

/**
 * Margin that a car must be left with at its limit so that its yaw rate can follow the turn, m/s².
 *
 * Balances take the yaw acceleration as zero. A car that comes to turn harder, or slows down in a
 * turn as hard as before, must yaw faster: r = ay/V, so ṙ = (j − ay·ax/V)/V. The moment I·ṙ into
 * the turn that this takes is −I·ṙ·L/(m·a·b) as a margin. A car whose own margin is above that
 * cannot follow: counted so, its front gives up first by as much as the two differ.
 *
 * @param turn - its hardest turn
 * @param lateralJerk - m/s³ by which it comes to turn harder to the left
 * @returns below 0 where the yaw rate must grow to the left
 * @see docs/model.md, "The whole car in balance"; Milliken 1995, ch. 8, for the moment as a margin
 */
export function yawAccelerationMargin(
  car: HandlingCar,
  turn: Pick<CarBalance, "speed" | "lateralAcceleration" | "longitudinalAcceleration">,
  lateralJerk = 0,
): number {
  const { speed, lateralAcceleration, longitudinalAcceleration } = turn;
  const slowing = (lateralAcceleration * longitudinalAcceleration) / speed;
  const yawAcceleration = (lateralJerk - slowing) / speed;
  const { front: a, rear: b } = axleDistances(car);
  return 0 - (car.yawInertia * yawAcceleration * car.wheelbase) / (carMass(car) * a * b);
}

import { type CarInRoll, sprungMassOnAxles } from "./car-in-roll.js";

/**
 * Lever arm of the body in roll, m: from the roll axis, where the body's mass stands over it, up to
 * the centre of gravity of the sprung mass. Below zero when the roll axis is the higher one.
 *
 * @example
 * rollLeverArm(carInRoll(demoCar))
 * // → 0.46136, by hand: 0.53022 − (0.05·486.375 + 0.09·433.625)/920
 */
export function rollLeverArm(car: CarInRoll): number {
  const { front, rear } = sprungMassOnAxles(car);
  const axis = front * car.front.rollCentreHeight + rear * car.rear.rollCentreHeight;
  return car.sprungHeight - axis / car.sprungMass; // d = h_s − mean roll centre – Milliken 1995, ch. 18
}

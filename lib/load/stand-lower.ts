import { requireInRange } from "../check.js";
import { type CarInRoll, requireCarInRoll, sprungMassOnAxles } from "./car-in-roll.js";
import type { Axles } from "./wheels.js";

/**
 * The same car with its body lower, both ends alike, on the same springs and wheels.
 *
 * The sprung mass goes down by the lowering; the wheels stay. A roll centre goes where its links
 * take it, which may be further than the body.
 *
 * @param lowering - m, above 0 down, −0.3 to 0.3
 * @param rollCentreChange - m that each roll centre rises over the ground; below 0 it falls
 * @throws RangeError when a number, or the lowered car, is outside its range
 */
export function standLower(
  car: CarInRoll,
  lowering: number,
  rollCentreChange: Axles<number>,
): CarInRoll {
  requireInRange("lowering", lowering, -0.3, 0.3, "m");
  const axle = (end: "front" | "rear") => ({
    ...car[end],
    rollCentreHeight: car[end].rollCentreHeight + rollCentreChange[end],
  });
  const lowered = {
    ...car,
    sprungHeight: car.sprungHeight - lowering,
    front: axle("front"),
    rear: axle("rear"),
  };
  requireCarInRoll(lowered);
  return lowered;
}

/**
 * Lever arm of the body in roll, m: from the roll axis, where the body's mass stands over it, up to
 * the centre of gravity of the sprung mass. Below zero when the roll axis is the higher one.
 */
export function rollLeverArm(car: CarInRoll): number {
  const { front, rear } = sprungMassOnAxles(car);
  const axis = front * car.front.rollCentreHeight + rear * car.rear.rollCentreHeight;
  return car.sprungHeight - axis / car.sprungMass; // d = h_s − mean roll centre – Milliken 1995, ch. 18
}

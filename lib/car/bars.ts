import { requireInRange } from "../check.js";
import type { Axles } from "../load/wheels.js";
import type { Axle, Car } from "./car.js";

/**
 * The same car with anti-roll bars of these roll stiffnesses, whatever positions it has.
 *
 * @param stiffness - N·m/rad at each axle, at least 0 (0: no bar)
 * @throws Refusal for a stiffness below 0
 * @example
 * barRollStiffnessOf(withBars(demoCar, { front: 20e3, rear: 0 }).front) // → 20000
 */
export function withBars(car: Car, stiffness: Axles<number>): Car {
  const front = withBar(car.front, stiffness.front, "front");
  return { ...car, front, rear: withBar(car.rear, stiffness.rear, "rear") };
}

function withBar(axle: Axle, stiffness: number, end: "front" | "rear"): Axle {
  requireInRange(`${end} bar`, stiffness, 0, 1e6, "N·m/rad");
  const rate = stiffness / axle.track ** 2; // K = k·i²·t², here with i = 1
  return { ...axle, bar: { motionRatio: 1, positions: [{ rate }], position: 1 } };
}

/**
 * The same car with the bar of one axle in another of its positions.
 *
 * @param position - 1 is the softest; a car without a bar there has position 1 only
 * @throws Refusal for a position the bar does not have
 * @example
 * withBarPosition(demoCar, "front", 5).front.bar.position // → 5
 */
export function withBarPosition(car: Car, end: "front" | "rear", position: number): Car {
  const axle = car[end];
  const count = axle.bar?.positions.length ?? 1;
  requireInRange(`${end} bar position`, position, 1, count);
  return axle.bar ? { ...car, [end]: { ...axle, bar: { ...axle.bar, position } } } : car;
}

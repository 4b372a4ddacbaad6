import type { CarInRoll } from "./car-in-roll.js";
import { distributeLoadTransfer } from "./distribution.js";
import { eachAxle } from "./wheels.js";

/** Which inside wheel leaves the ground first as a steady turn tightens, and when. */
export interface FirstLift {
  readonly axle: "front" | "rear";
  /** m/s²; Infinity when no turn lifts a wheel */
  readonly lateralAcceleration: number;
}

const GENTLE = 1e-3; // m/s², a turn in which every wheel is down

/**
 * The inside wheel that lifts first. Until then each axle's transfer grows in proportion to ay.
 *
 * @throws Refusal as `distributeLoadTransfer`
 * @example
 * firstWheelLift(carInRoll(withBars(demoCar, { front: 0, rear: 60e3 }))).axle
 * // → "rear", common practice: the axle with the stiff bar
 */
export function firstWheelLift(car: CarInRoll): FirstLift {
  const gentle = distributeLoadTransfer(car, GENTLE);
  const liftAt = eachAxle(gentle, ({ load, total }) =>
    total > 0 ? (GENTLE * (load.left + load.right)) / 2 / total : Infinity,
  );
  const axle = liftAt.front < liftAt.rear ? "front" : "rear";
  return { axle, lateralAcceleration: liftAt[axle] };
}

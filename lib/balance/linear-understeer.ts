import { requireInRange } from "../check.js";
import { type Axles, eachAxle } from "../load/wheels.js";
import { GRAVITY } from "../units.js";

/** The weight on an axle and the cornering stiffness of its two tyres together. */
export interface LinearAxle {
  /** N */
  readonly load: number;
  /** N/rad of both tyres */
  readonly corneringStiffness: number;
}

/**
 * Extra steering for each m/s² of lateral acceleration while tyres are far from their limit,
 * rad/(m/s²): above 0 understeer, below 0 oversteer.
 *
 * @throws Refusal for a load below 0 or a stiffness that is not above 0
 * @example
 * const [front, rear] = [{ load: 10756.2, corneringStiffness: 77840 }, { load: 9348.8, corneringStiffness: 76500 }];
 * understeerGradient({ front, rear }) * GRAVITY
 * // → 0.01598, Wong, Theory of Ground Vehicles, ex. 5.1, from memory: 0.015976 rad
 */
export function understeerGradient(car: Axles<LinearAxle>): number {
  const slip = eachAxle(car, ({ load, corneringStiffness }, end) => {
    requireInRange(`${end} load`, load, 0, Infinity, "N");
    requireInRange(`${end} cornering stiffness`, corneringStiffness, 1, Infinity, "N/rad");
    return load / corneringStiffness / GRAVITY;
  });
  return slip.front - slip.rear; // Kus = Wf/Cf − Wr/Cr – Wong, Theory of Ground Vehicles, ch. 5
}

/**
 * Speed at which an understeering car needs twice the steering of a slow one, m/s.
 *
 * @returns Infinity for a car without understeer
 */
export function characteristicSpeed(gradient: number, wheelbase: number): number {
  requireInRange("wheelbase", wheelbase, 0.1, 20, "m");
  return gradient > 0 ? Math.sqrt(wheelbase / gradient) : Infinity; // – Wong, ch. 5
}

/**
 * Speed from which an oversteering car no longer goes straight by itself, m/s.
 *
 * @returns Infinity for a car without oversteer
 */
export function criticalSpeed(gradient: number, wheelbase: number): number {
  return characteristicSpeed(-gradient, wheelbase); // – Wong, ch. 5
}

import type { HandlingCar } from "../balance/handling-car.js";
import { requireInRange } from "../check.js";
import { motionOf, numbersOf, RELAXATION_LENGTH, stateOf } from "./motion.js";
import { type Happening, type MovingState, whatHappens } from "./moving-car.js";
import { freeRollInertia, rollingBody } from "./rolling-body.js";
import { rungeKuttaStep } from "./runge-kutta.js";

/** One moment of a drive. */
export interface Moment extends MovingState, Happening {
  /** s since the start */
  readonly time: number;
  /** rad of the front wheels */
  readonly steer: number;
}

/** A drive at a constant speed with a steer angle that changes. */
export interface Drive {
  /** m/s */
  readonly speed: number;
  /** s */
  readonly duration: number;
  /** rad of the front wheels at a time, above 0 to the left */
  readonly steer: (time: number) => number;
  /** m that a tyre rolls to build up most of its side force; `RELAXATION_LENGTH` when left out */
  readonly relaxationLength?: number;
  /** s between moments; 0.005 when left out */
  readonly step?: number;
}

/** A car that goes straight ahead. */
export const straightAhead: MovingState = {
  lateralSpeed: 0,
  yawRate: 0,
  rollAngle: 0,
  rollRate: 0,
  sideForce: { front: 0, rear: 0 },
};

/**
 * Drives a car and reports every moment, the first one included.
 *
 * @param start - the state at the start; straight ahead when left out
 * @throws Refusal when speed, duration or step is out of range
 * @example
 * drive(handlingCarOf(demoCar), { speed: 20, duration: 0.1, steer: () => 0 }).length
 * // → 21, by hand: 0.1/0.005 and the start
 */
export function drive(
  car: HandlingCar,
  { speed, duration, steer, relaxationLength = RELAXATION_LENGTH, step = 0.005 }: Drive,
  start: MovingState = straightAhead,
): Moment[] {
  requireInRange("speed", speed, 1, 120, "m/s");
  requireInRange("duration", duration, 0, 60, "s");
  requireInRange("relaxation length", relaxationLength, 0.01, 5, "m");
  requireInRange("step", step, 1e-4, 0.1, "s");
  const substeps = Math.ceil(step * fastestRate(car, speed / relaxationLength));
  const motion = motionOf(car, speed, relaxationLength);
  const slopes = (time: number, numbers: readonly number[]) => motion(steer(time), numbers);
  const moments: Moment[] = [];
  let numbers = numbersOf(start);
  for (let i = 0; i <= Math.round(duration / step); i++) {
    const time = i * step;
    const state = stateOf(numbers);
    const angle = steer(time);
    moments.push({ time, steer: angle, ...state, ...whatHappens(car, speed, angle, state) });
    for (let j = 0; j < substeps; j++)
      numbers = rungeKuttaStep(slopes, time + (j / substeps) * step, numbers, step / substeps);
  }
  return moments;
}

/** The fastest thing that goes on in a car, 1/s: tyres building up force, dampers stopping a body. */
function fastestRate(car: HandlingCar, tyres: number): number {
  const body = rollingBody(car);
  const free = freeRollInertia(car, body);
  return Math.max(tyres, body.damping / free, Math.sqrt(Math.abs(body.stiffness) / free));
}

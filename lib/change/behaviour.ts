import { handlingCarOf } from "../balance/handling-car-of.js";
import { mirrorCar } from "../balance/mirror-car.js";
import { type PhaseName, phaseBalances, phaseNames } from "../balance/phases.js";
import type { Car } from "../car/car.js";
import { type CarFigures, figuresOf } from "./figures.js";

/** Balance and grip in one part of a corner, mean of left and right corners. */
export interface PhaseFigures {
  /** m/s² that the rear can do more than the front: above 0 understeer, below 0 oversteer */
  readonly understeerMargin: number;
  /** m/s² that the car can do */
  readonly lateralAcceleration: number;
}

/** What a car does, as far as a set-up change can move it. */
export interface Behaviour {
  readonly phases: Readonly<Record<PhaseName, PhaseFigures>>;
  readonly figures: CarFigures;
}

/** Speed at which balance is compared when none is given: 90 km/h. */
export const USUAL_SPEED = 25; // m/s

/**
 * Balance in each part of a corner, and all else that a change may move.
 *
 * @param measured - the car whose file gave the heights; the car itself when left out
 * @param speed - m/s
 * @throws RangeError when the car cannot stand on its springs
 */
export function behaviourOf(car: Car, measured: Car = car, speed = USUAL_SPEED): Behaviour {
  const handling = handlingCarOf(car, measured);
  const left = phaseBalances(handling, speed);
  const right = phaseBalances(mirrorCar(handling), speed, left);
  const phase = (name: PhaseName): PhaseFigures => ({
    understeerMargin: (left[name].understeerMargin + right[name].understeerMargin) / 2,
    lateralAcceleration: (left[name].lateralAcceleration + right[name].lateralAcceleration) / 2,
  });
  return { phases: forEachPhase(phase), figures: figuresOf(car, measured, handling) };
}

function forEachPhase<T>(work: (name: PhaseName) => T): Record<PhaseName, T> {
  return Object.fromEntries(phaseNames.map((name) => [name, work(name)])) as Record<PhaseName, T>;
}

/** A tree of numbers minus another of the same form; what did not move is 0, without end or not. */
export function differenceOf<T extends object>(after: T, before: T): T {
  const entries = Object.entries(after).map(([name, value]) => {
    const old = (before as Record<string, unknown>)[name];
    if (typeof value === "number") return [name, value === old ? 0 : value - Number(old)];
    return [name, differenceOf(value, old as typeof value)];
  });
  return Object.fromEntries(entries) as T;
}

import type { Car } from "../car/car.js";
import { type CarAtRest, type Rest, restOf } from "../statics/rest.js";
import type { HandlingCar } from "./handling-car.js";
import { handlingCarOf } from "./handling-car-of.js";

/** A car at rest, and ready to be driven. */
export interface StandingCar extends CarAtRest {
  readonly handling: HandlingCar;
}

/**
 * A car as it stands, made once and passed on: rest and handling are worked out when first asked
 * for, and not again. It never changes; a changed car is a new one.
 *
 * @param measured - the car whose file gave the heights, as for `restOf`; the car itself when left out
 * @throws Refusal, once it is asked for rest or handling, when the car cannot stand on its springs
 * @example
 * standingCar(demoCar).rest.frontShare // → 0.51979, by hand: 561.375 kg of 1080 kg
 */
export function standingCar(car: Car, measured: Car = car): StandingCar {
  let rest: Rest | undefined;
  let handling: HandlingCar | undefined;
  return {
    car,
    measured,
    get rest() {
      rest ??= restOf(car, measured);
      return rest;
    },
    get handling() {
      handling ??= handlingCarOf(car, measured, this.rest);
      return handling;
    },
  };
}

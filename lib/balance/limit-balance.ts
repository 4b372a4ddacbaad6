import { meanOf } from "../car/axle.js";
import { carInRoll } from "../car/axle-loads.js";
import type { Car } from "../car/car.js";
import { tyreOf } from "../car/tyres.js";
import { type Axles, eachAxle } from "../load/wheels.js";
import { type Grip, type LimitBalance, limitBalance } from "./limit.js";

/**
 * Greatest side force of one upright tyre of each axle, at the mean pressure of the axle, N from N.
 *
 * @example
 * gripOf(demoCar).front(3000) // → 3450, by hand: the club tyre has 1.30 less 0.05 for each kN
 */
export function gripOf(car: Car): Axles<Grip> {
  return eachAxle(car, (axle) => {
    const { peakSideForce } = tyreOf(axle);
    const pressure = meanOf(axle.tyre.pressure);
    return (load: number) => peakSideForce({ load, pressure });
  });
}

/**
 * How fast a car can turn in a steady turn, and which end gives up first.
 *
 * Upright tyres, each at the best slip angle of its own; no braking or driving.
 *
 * @throws Refusal as `distributeLoadTransfer`
 * @example
 * limitBalanceOf(withBars(demoCar, { front: 0, rear: 60e3 })).first
 * // → "rear", common practice: a stiff rear bar takes grip at the rear
 */
export function limitBalanceOf(car: Car): LimitBalance {
  return limitBalance(carInRoll(car), gripOf(car));
}

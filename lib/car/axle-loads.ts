import type { AxleInRoll, CarInRoll } from "../load/car-in-roll.js";
import { type Distribution, distributeLoadTransfer } from "../load/distribution.js";

import { rollStiffnessOf } from "./axle.js";
import type { Axle, Car } from "./car.js";
import { frontShareOf, sprungMassOf } from "./masses.js";

/** What the distribution of load transfer needs of a car. */
export function carInRoll(car: Car): CarInRoll {
  const sprung = sprungMassOf(car);
  return {
    sprungMass: sprung.mass,
    sprungHeight: sprung.height,
    sprungFrontShare: frontShareOf(sprung, car.wheelbase),
    front: axleInRoll(car.front),
    rear: axleInRoll(car.rear),
    torsionStiffness: car.torsionStiffness ?? Infinity,
  };
}

function axleInRoll(axle: Axle): AxleInRoll {
  return {
    track: axle.track,
    rollStiffness: rollStiffnessOf(axle),
    rollCentreHeight: axle.geometry.rollCentreHeight,
    unsprungMass: axle.unsprungMass,
    unsprungHeight: axle.unsprungHeight,
  };
}

/**
 * How a car shares its load transfer between the axles in a steady turn.
 *
 * @param lateralAcceleration - m/s², above 0 in a left turn
 * @throws RangeError as `distributeLoadTransfer`
 */
export function axleLoadsOf(car: Car, lateralAcceleration: number): Distribution {
  return distributeLoadTransfer(carInRoll(car), lateralAcceleration);
}

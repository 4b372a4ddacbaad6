import type { AxleInRoll, CarInRoll } from "../load/car-in-roll.js";
import { type Distribution, distributeLoadTransfer } from "../load/distribution.js";

import { rollStiffnessOfPair, suspensionRollStiffness } from "../spring/roll-stiffness.js";
import { isBeamAxle, rollSpringsOf, tyreStiffnessOf, wheelRateOf } from "./axle.js";
import type { Axle, Car } from "./car.js";
import { axleWeightsOf, frontShareOf, sprungMassOf } from "./masses.js";

/**
 * What the distribution of load transfer needs of a car.
 *
 * @example
 * carInRoll(demoCar).sprungFrontShare // → 0.52867, by hand: 486.375 kg of 920 kg
 */
export function carInRoll(car: Car): CarInRoll {
  const sprung = sprungMassOf(car);
  const weight = axleWeightsOf(car);
  return {
    sprungMass: sprung.mass,
    sprungHeight: sprung.height,
    sprungFrontShare: frontShareOf(sprung, car.wheelbase),
    front: axleInRoll(car.front, weight.front),
    rear: axleInRoll(car.rear, weight.rear),
    torsionStiffness: car.torsionStiffness ?? Infinity,
  };
}

/** The tyres are as stiff as at half the weight of their axle, about which a turn loads them. */
function axleInRoll(axle: Axle, weight: number): AxleInRoll {
  return {
    track: axle.track,
    rollStiffness: suspensionRollStiffness(rollSpringsOf(axle)),
    tyreRollStiffness: rollStiffnessOfPair(tyreStiffnessOf(axle, weight / 2), axle.track),
    ownForceShare: ownForceShareOf(axle),
    independent: !isBeamAxle(axle),
    wheelRate: wheelRateOf(axle),
    rollCentreHeight: axle.geometry.rollCentreHeight,
    rollCentreMigration: axle.geometry.rollCentreMigration ?? -1, // unsaid: fixed to the body
    unsprungMass: axle.unsprungMass,
    unsprungHeight: axle.unsprungHeight,
  };
}

/**
 * How much of the side force of its own wheels an axle keeps: a beam all of it, independent wheels
 * half the track over the swing arm, which is one over the camber gain.
 */
function ownForceShareOf(axle: Axle): number {
  return isBeamAxle(axle) ? 1 : (-(axle.geometry.camberGain ?? 0) * axle.track) / 2;
}

/**
 * How a car shares its load transfer between the axles in a steady turn.
 *
 * @param lateralAcceleration - m/s², above 0 in a left turn
 * @throws Refusal as `distributeLoadTransfer`
 * @example
 * axleLoadsOf(demoCar, 0).front.load.left // → 2752.6, by hand: ½·561.375·9.80665
 */
export function axleLoadsOf(car: Car, lateralAcceleration: number): Distribution {
  return distributeLoadTransfer(carInRoll(car), lateralAcceleration);
}

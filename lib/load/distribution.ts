import { requireInRange } from "../check.js";
import { GRAVITY } from "../units.js";
import { type CarInRoll, requireCarInRoll, sprungMassOnAxles } from "./car-in-roll.js";
import { type Demand, demandOf, liftWheels, NO_WHEEL, type Rolled, rolled } from "./wheel-lift.js";
import { type Axles, eachAxle, type Sides } from "./wheels.js";

/** Load that one axle moves from its left to its right tyre, N, by cause. */
export interface AxleTransfer {
  /** through springs, bar and tyres, by the roll angle */
  readonly elastic: number;
  /** through the links, at the roll centre, at once */
  readonly geometric: number;
  /** of the wheels themselves */
  readonly unsprung: number;
  /** the sum of the three */
  readonly total: number;
  /** N on each tyre */
  readonly load: Sides<number>;
  /** the inside tyre is off the ground: this axle has moved all it has */
  readonly lifted: boolean;
}

/** How the axles share the transfer of a turn. */
export interface Distribution extends Axles<AxleTransfer> {
  /** rad, above 0 right side down; of the body at each axle (equal for a stiff chassis) */
  readonly rollAngle: Axles<number>;
  /** N, front and rear together */
  readonly total: number;
  /** share of the transfer that the front axle makes, 0–1 */
  readonly frontShare: number;
  /** N·m about the ground that the centre of gravity adds by moving sideways in roll */
  readonly momentFromRoll: number;
  /** both inside wheels are off the ground: the car tips over, and these are its last loads */
  readonly tipped: boolean;
}

/**
 * Shares the load transfer of a steady turn between the axles.
 *
 * The body rolls until springs, bars and tyres balance it: φ = ms·ay·d / (ΣKφ − ms·g·d). An axle
 * whose inside tyre leaves the ground has moved all it has, and the rest goes to the other one.
 * Small angles, fixed roll centres, smooth road, both sides of the car alike.
 *
 * @param lateralAcceleration - m/s², above 0 in a left turn
 * @returns loads that sum to the weight, none below zero; `tipped` when the car cannot do it
 * @throws RangeError when a number is outside its range, or the springs cannot hold the body up
 * @see Milliken 1995, ch. 18
 */
export function distributeLoadTransfer(car: CarInRoll, lateralAcceleration: number): Distribution {
  requireCarInRoll(car);
  requireInRange("lateral acceleration", lateralAcceleration, -1e3, 1e3, "m/s²");
  const demand = demandOf(car, Math.abs(lateralAcceleration));
  const onFour = rolled(car, demand, NO_WHEEL);
  if (onFour === undefined) throw new RangeError(CANNOT_STAND);
  const state = liftWheels(car, demand, onFour);
  return report(car, demand, state, lateralAcceleration < 0 ? -1 : 1);
}

const CANNOT_STAND =
  "roll stiffness of the two axles together must be greater than sprung mass × gravity × " +
  "height above the roll axis, or the body falls over at rest.";

function report(car: CarInRoll, demand: Demand, state: Rolled, turn: 1 | -1): Distribution {
  const axles = eachAxle(demand.links, ({ geometric, unsprung, sum }, end): AxleTransfer => {
    const half = demand.load[end] / 2;
    const lifted = state.lifted[end];
    const total = turn * (lifted === 0 ? state.elastic[end] + sum : lifted * half);
    return {
      elastic: turn * state.elastic[end],
      geometric: turn * geometric,
      unsprung: turn * unsprung,
      total,
      load: { left: half - total, right: half + total },
      lifted: lifted !== 0,
    };
  });
  const total = axles.front.total + axles.rear.total;
  const sprung = sprungMassOnAxles(car);
  const lean = eachAxle(
    car,
    (axle, end) =>
      sprung[end] * GRAVITY * (car.sprungHeight - axle.rollCentreHeight) * state.angle[end],
  );
  return {
    front: axles.front,
    rear: axles.rear,
    rollAngle: eachAxle(state.angle, (angle) => turn * angle),
    total,
    frontShare: total === 0 ? 0.5 : axles.front.total / total,
    momentFromRoll: turn * (lean.front + lean.rear),
    tipped: state.lifted.front !== 0 && state.lifted.rear !== 0,
  };
}

import { requireInRange } from "../check.js";
import { Refusal } from "../refusal.js";
import { GRAVITY } from "../units.js";
import { axleLoads, type CarInRoll, requireCarInRoll, sprungMassOnAxles } from "./car-in-roll.js";
import { transferAtOnce } from "./links.js";
import { type Rolled, riseOf, rolledInTurn } from "./wheel-lift.js";
import { type Axles, eachAxle, type Sides } from "./wheels.js";

/** Load that one axle moves from its left to its right tyre, N, by cause. */
export interface AxleTransfer {
  /** with the roll angle: through springs and bar, and by the weight that leans on links and wheels */
  readonly elastic: number;
  /** through the links, at the roll centre, at once */
  readonly geometric: number;
  /** of the wheels themselves, at once, as far as their own side force stays at the axle */
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
  /** rad of it that the tyres of each axle give; the rest is between body and wheels */
  readonly tyreAngle: Axles<number>;
  /** N, front and rear together */
  readonly total: number;
  /** share of the transfer that the front axle makes, 0–1 */
  readonly frontShare: number;
  /** N·m about the ground that body and wheels add by leaning out, and up on an axle with a wheel in the air */
  readonly momentFromRoll: number;
  /** both inside wheels are off the ground: the car tips over, and these are its last loads */
  readonly tipped: boolean;
}

/**
 * Shares the load transfer of a steady turn between the axles.
 *
 * The body rolls until springs and bars balance it, and its axles roll on their tyres: see
 * `rollEquilibrium`. An axle whose inside tyre leaves the ground has moved all it has, and the rest
 * goes to the other one. Small angles, fixed roll centres, smooth road, both sides of the car alike.
 *
 * @param lateralAcceleration - m/s², above 0 in a left turn
 * @returns loads that sum to the weight, none below zero; `tipped` when the car cannot do it
 * @throws Refusal when a number is outside its range, or the springs cannot hold the body up
 * @see Milliken 1995, ch. 18
 * @example
 * const front = { track: 1.5, rollStiffness: 62625, rollCentreHeight: 0.05, unsprungMass: 80, unsprungHeight: 0.3 };
 * const rear = { track: 1.48, rollStiffness: 47808, rollCentreHeight: 0.12, unsprungMass: 90, unsprungHeight: 0.3 };
 * const car = { sprungMass: 1100, sprungHeight: 0.48, sprungFrontShare: 1.4 / 2.6, front, rear };
 * distributeLoadTransfer(car, 0.05 * GRAVITY).front.total
 * // → 101.9, the mechanics engine of the tests: 101.94
 */
export function distributeLoadTransfer(car: CarInRoll, lateralAcceleration: number): Distribution {
  requireCarInRoll(car);
  requireInRange("lateral acceleration", lateralAcceleration, -1e3, 1e3, "m/s²");
  const ay = Math.abs(lateralAcceleration);
  const state = rolledInTurn(car, ay);
  if (state === undefined) throw new Refusal("cannot-stand", CANNOT_STAND);
  return report(car, state, ay, lateralAcceleration < 0 ? -1 : 1);
}

/** The sentence for springs that a body falls over on. */
export const CANNOT_STAND =
  "roll stiffness of the two axles together must be greater than sprung mass × gravity × " +
  "height above the roll axis, or the body falls over at rest: see spring and bar of both axles and the " +
  "heights of the masses.";

function report(car: CarInRoll, state: Rolled, ay: number, turn: 1 | -1): Distribution {
  const loads = axleLoads(car);
  const axles = eachAxle(transferAtOnce(car, ay), ({ geometric, unsprung }, end): AxleTransfer => {
    const [half, lifted] = [loads[end] / 2, state.lifted[end]];
    const total = lifted === 0 ? state.moment[end] / car[end].track : lifted * half;
    return {
      elastic: turn * (total - geometric - unsprung),
      geometric: turn * geometric,
      unsprung: turn * unsprung,
      total: turn * total,
      load: { left: half - turn * total, right: half + turn * total },
      lifted: lifted !== 0,
    };
  });
  const total = axles.front.total + axles.rear.total;
  return {
    front: axles.front,
    rear: axles.rear,
    rollAngle: eachAxle(state.body, (angle) => turn * angle),
    tyreAngle: eachAxle(state.tyres, (angle) => turn * angle),
    total,
    frontShare: total === 0 ? 0.5 : axles.front.total / total,
    momentFromRoll:
      turn * (momentFromRoll(car, state.body, state.tyres) + momentFromRise(car, state)),
    tipped: state.lifted.front !== 0 && state.lifted.rear !== 0,
  };
}

/** Moment about the ground of all weights that lean out, N·m: ms·g·(d·φ + h_rc·φt) + mu·g·hu·λ. */
export function momentFromRoll(car: CarInRoll, body: Axles<number>, tyres: Axles<number>): number {
  const sprung = sprungMassOnAxles(car);
  const moments = eachAxle(car, (axle, end) => {
    const { rollCentreHeight, ownForceShare = 1, unsprungMass, unsprungHeight } = axle;
    const out = (car.sprungHeight - rollCentreHeight) * body[end] + rollCentreHeight * tyres[end];
    const lean = (1 - ownForceShare) * body[end] + ownForceShare * tyres[end];
    return GRAVITY * (sprung[end] * out + unsprungMass * unsprungHeight * lean);
  });
  return moments.front + moments.rear;
}

/** Moment of side force on what axles with a wheel in the air have lifted, N·m. */
function momentFromRise(car: CarInRoll, state: Rolled): number {
  const [sprung, rise] = [sprungMassOnAxles(car), riseOf(car, state)];
  const of = (end: "front" | "rear") => (sprung[end] + car[end].unsprungMass) * rise[end];
  return state.lateralAcceleration * (of("front") + of("rear"));
}

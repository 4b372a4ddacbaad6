import { requireInRange } from "../check.js";
import { Refusal } from "../refusal.js";
import {
  type AxleInRoll,
  axleLoads,
  type CarInRoll,
  requireCarInRoll,
  sprungMassOnAxles,
} from "./car-in-roll.js";
import { CANNOT_STAND } from "./distribution.js";
import { rollEquilibrium } from "./roll-equilibrium.js";
import { type Rolled, rolledInTurn } from "./wheel-lift.js";
import { type Axles, eachAxle } from "./wheels.js";

const TOO_HARD = 1e3; // m/s², more than any turn
const HALVINGS = 30;
const ROUNDS = 30;
const CLOSE = 1e-5; // of the threshold

/**
 * Lateral acceleration to the left at which both inner wheels are off the ground and nothing holds
 * the car up any more, m/s².
 *
 * Springs and tyres give, body and wheels lean out, an axle that has lifted its inner wheel goes up
 * with the body on it, and all its side force is at the outer wheel: on links of its own that lifts
 * the body and moves the roll centre. See docs/model.md. Level road, no stops, no kerb.
 *
 * @param inner - N on the inner, left tyre of each axle before the turn: half the axle's load when
 * left out
 * @returns Infinity for a car that no turn tips over
 * @throws Refusal when a number is outside its range, or the springs cannot hold the body up
 */
export function tippingAcceleration(
  car: CarInRoll,
  inner: Axles<number> = eachAxle(axleLoads(car), (load) => load / 2),
): number {
  requireCarInRoll(car);
  eachAxle(inner, (load, end) => requireInRange(`${end} inner load`, load, 0, 1e6, "N"));
  if (rollEquilibrium(car, 0) === undefined) throw new Refusal("cannot-stand", CANNOT_STAND);
  let tip: number | undefined;
  let shape = car;
  for (let i = 0; i < ROUNDS; i++) {
    const state = tipped(shape, inner, 1.2 * (tip ?? 0)) ?? tipped(shape, inner, TOO_HARD);
    if (state === undefined) break;
    const before = tip ?? 0;
    tip = state.lateralAcceleration;
    if (Math.abs(tip - before) < CLOSE * tip) break;
    shape = halfWay(shape, onOuterWheels(car, state));
  }
  return tip ?? Infinity;
}

const SAFELY = 0.8;

/**
 * Whether a turn to the left is far from tipping a car over: a quick answer, whose only false
 * yes among random cars was one with its weight down at the road. The threshold lies between that of the links as they are at rest and that of the links as the first one
 * would bend them.
 *
 * @param inner - as in `tippingAcceleration`
 * @throws Refusal when a number is outside its range
 */
export function isFarFromTipping(
  car: CarInRoll,
  inner: Axles<number>,
  lateralAcceleration: number,
): boolean {
  requireCarInRoll(car);
  const atRest = tipped(car, inner, TOO_HARD);
  if (atRest === undefined) return rollEquilibrium(car, 0) !== undefined;
  if (lateralAcceleration > SAFELY * atRest.lateralAcceleration) return false;
  const bent = onOuterWheels(car, atRest);
  const next = tipped(bent, inner, TOO_HARD);
  return next !== undefined && lateralAcceleration < SAFELY * next.lateralAcceleration;
}

/** The car as it tips over before a turn as hard as this, if it does. */
function tipped(car: CarInRoll, inner: Axles<number>, before: number): Rolled | undefined {
  const state = before > 0 ? rolledInTurn(car, before, inner, HALVINGS) : undefined;
  return state?.lifted.front && state.lifted.rear ? state : undefined;
}

/** The car as its links hold it with all side force at its outer wheels. */
function onOuterWheels(car: CarInRoll, state: Rolled): CarInRoll {
  const sprung = sprungMassOnAxles(car);
  const ends = eachAxle(car, (axle, end) => axleOnOuter(axle, sprung[end], end, state));
  const lifted = sprung.front * ends.front.rise + sprung.rear * ends.rear.rise; // kg·m
  return {
    ...car,
    sprungHeight: car.sprungHeight + lifted / car.sprungMass,
    front: ends.front.axle,
    rear: ends.rear.axle,
  };
}

/**
 * One axle of it. In bump the outer patch goes along a curve that rises by the roll centre over half
 * the track and bends as the roll centre moves: side force F on it lifts the body by J and softens
 * the axle in roll, or stiffens it where the roll centre moves less than the body.
 */
function axleOnOuter(axle: AxleInRoll, sprungMass: number, end: "front" | "rear", state: Rolled) {
  if (!axle.independent) return { axle, rise: 0 };
  const { track, rollCentreHeight, rollCentreMigration = -1, wheelRate = Infinity } = axle;
  const force = (sprungMass + axle.unsprungMass) * state.lateralAcceleration;
  const [tyres, suspension] = [state.tyres[end], state.body[end] - state.tyres[end]];
  const slope = rollCentreHeight / (track / 2) + (1 + rollCentreMigration) * suspension + tyres;
  const rise = (force * slope) / (2 * wheelRate); // J = F·slope / 2k
  const bends = force * (track / 2) * (1 + rollCentreMigration);
  const changed = {
    ...axle,
    rollCentreHeight: rollCentreHeight - rollCentreMigration * rise,
    rollStiffness: axle.rollStiffness + bends,
  };
  return { axle: changed, rise };
}

/** Between two shapes of a car, so that one step after another settles. */
function halfWay(from: CarInRoll, to: CarInRoll): CarInRoll {
  const mean = (a: number, b: number) => (a + b) / 2;
  const axle = (a: AxleInRoll, b: AxleInRoll): AxleInRoll => ({
    ...a,
    rollCentreHeight: mean(a.rollCentreHeight, b.rollCentreHeight),
    rollStiffness: Math.max(0, mean(a.rollStiffness, b.rollStiffness)),
  });
  return {
    ...from,
    sprungHeight: mean(from.sprungHeight, to.sprungHeight),
    front: axle(from.front, to.front),
    rear: axle(from.rear, to.rear),
  };
}

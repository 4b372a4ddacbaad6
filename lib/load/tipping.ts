import { requireInRange } from "../check.js";
import { axleLoads, type CarInRoll, requireCarInRoll } from "./car-in-roll.js";
import { CANNOT_STAND } from "./distribution.js";
import { rolledInTurn } from "./wheel-lift.js";
import { type Axles, eachAxle } from "./wheels.js";

const TOO_HARD = 1e3; // m/s², more than any turn
const HALVINGS = 60;

/**
 * Lateral acceleration to the left at which both inner wheels are off the ground and nothing holds
 * the car up any more, m/s².
 *
 * @param inner - N on the inner, left tyre of each axle before the turn: half the axle's load when
 * left out
 * @returns Infinity for a car that no turn tips over
 * @throws RangeError when a number is outside its range, or the springs cannot hold the body up
 */
export function tippingAcceleration(
  car: CarInRoll,
  inner: Axles<number> = eachAxle(axleLoads(car), (load) => load / 2),
): number {
  requireCarInRoll(car);
  eachAxle(inner, (load, end) => requireInRange(`${end} inner load`, load, 0, 1e6, "N"));
  const state = rolledInTurn(car, TOO_HARD, inner, HALVINGS);
  if (state === undefined) throw new RangeError(CANNOT_STAND);
  const tipped = state.lifted.front !== 0 && state.lifted.rear !== 0;
  return tipped ? state.lateralAcceleration : Infinity;
}

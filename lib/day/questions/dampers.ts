import { handlingCarOf } from "../../balance/handling-car-of.js";
import { limitBalanceOf } from "../../balance/limit-balance.js";
import type { Car } from "../../car/car.js";
import { Refusal } from "../../refusal.js";
import { dampersInRoll } from "../../transient/dampers-in-roll.js";
import { stepSteer } from "../../transient/step-steer.js";

/** Load that the front dampers of a car move while its body leans and no longer rolls, N. */
export function damperTransferAtRest(car: Car): number {
  return dampersInRoll(car.front, 0).transfer;
}

/** The car with other dampers at one end, as a multiple of those it has. */
export function withDampersAt(car: Car, end: "front" | "rear", times: number): Car {
  const { damper } = car[end];
  const changed = { ...damper, bump: times * damper.bump, rebound: times * damper.rebound };
  return { ...car, [end]: { ...car[end], damper: changed } };
}

const speed = 25; // m/s
const early = 0.25; // s after the start of the turn

/**
 * Loads while a car goes from straight ahead into a turn well below its limit, and once it has
 * settled there.
 */
export function intoTurn(car: Car) {
  const lateralAcceleration = Math.floor(0.5 * limitBalanceOf(car).lateralAcceleration);
  const { moments } = stepSteer(handlingCarOf(car), { speed, lateralAcceleration });
  const soon = moments.find(({ time }) => time >= early) ?? moments[0];
  const settled = moments.at(-1);
  if (!soon || !settled) throw new Refusal("does-not-suit", "it cannot be steered into a turn.");
  return { lateralAcceleration, soon: soon.load, settled: settled.load };
}

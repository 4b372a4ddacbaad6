import { type CarBalance, carBalance } from "./car-balance.js";
import type { Progress } from "./driving.js";
import type { HandlingCar } from "./handling-car.js";

/** The four parts of a corner, in the order in which a driver meets them. */
export type PhaseName = "braking in" | "turn-in" | "middle" | "power on";

/** What the driver does in a part of a corner, at some speed. */
export type Phase = Progress;

/**
 * What a driver does in each part of a corner: brake hard, let the brake go while the body rolls in,
 * hold the turn, drive out of it – common practice, no source.
 */
export const phases: Readonly<Record<PhaseName, Phase>> = {
  "braking in": { longitudinalAcceleration: -4 },
  "turn-in": { longitudinalAcceleration: -1, lateralJerk: 12 },
  middle: {},
  "power on": { longitudinalAcceleration: 2 },
};

/** The names of the phases in the order of a corner. */
export const phaseNames: readonly PhaseName[] = ["braking in", "turn-in", "middle", "power on"];

/** A balance for each part of a corner. */
export type PhaseBalances = Readonly<Record<PhaseName, CarBalance>>;

/**
 * Which end gives up first in each part of a left corner, and by how much.
 *
 * @param speed - m/s
 * @param start - the phases of a similar car, for a quick start
 * @throws Refusal when the springs cannot hold the body up
 * @example
 * phaseBalances(handlingCarOf(demoCar), 25).middle.first
 * // → "front", the independent solution of the tests
 */
export function phaseBalances(
  car: HandlingCar,
  speed: number,
  start?: PhaseBalances,
): PhaseBalances {
  const one = (name: PhaseName) => carBalance(car, { speed, ...phases[name] }, start?.[name]);
  return {
    "braking in": one("braking in"),
    "turn-in": one("turn-in"),
    middle: one("middle"),
    "power on": one("power on"),
  };
}

import type { Car } from "../car/car.js";
import { leastNorm, solveLinear } from "../linear.js";
import { eachAxle, type Wheels } from "../load/wheels.js";
import { type CarAtRest, type Rest, restOf } from "./rest.js";
import {
  requireOnFour,
  responsePerTurn,
  type Stance,
  stanceOf,
  wheelsFrom,
  withTurns,
} from "./seat-turns.js";
import { eachSide } from "./sides.js";

/** Seat turns that bring a changed car back to where it stood. */
export interface TurnsBack {
  /** Turns to make at each seat, exact; above zero raises that corner. */
  readonly turns: Wheels<number>;
  /** The same in steps of the adjuster, for the hand. */
  readonly roundedTurns: Wheels<number>;
}

/** How to bring a changed car back to where it stood. */
export interface PutBack extends TurnsBack {
  /** Camber to add at each wheel, rad, after the rounded turns. */
  readonly camber: Wheels<number>;
  /** Toe to add at each wheel, rad, after the rounded turns. */
  readonly toe: Wheels<number>;
  /** The car with the exact turns made. */
  readonly exact: Rest;
  /** The car with the rounded turns made: what rounding leaves. */
  readonly rounded: Rest;
}

/**
 * Which seat turns bring the heights back after a change, and with them camber and toe.
 *
 * Heights are three conditions (heave, pitch, roll) on four seats. The fourth freedom turns one
 * diagonal up and the other down: it sets the cross weight. Asked to keep the cross weight too,
 * the answer is the only one; else it is the one with the least turns (least sum of squares).
 *
 * @param changed - the car after the change
 * @param measured - the car as it was measured
 * @param wanted - stance to restore; the stance of the measured car when left out
 * @param keepCrossWeight - whether crossShare is to be restored as well
 * @throws Refusal when a wheel is in the air: turns and heights are then not proportional
 * @example
 * const softer = applyChange(demoCar, { lever: "springRate", end: "front", by: -10e3 });
 * putBack(softer, demoCar).exact.rideHeight.front.left // → 0.130000, as it was measured
 */
export function putBack(
  changed: Car,
  measured: Car,
  wanted: Stance = restOf(measured),
  keepCrossWeight = true,
): PutBack {
  const at = { car: changed, measured, rest: restOf(changed, measured) };
  const { turns, roundedTurns } = turnsBack(at, wanted, keepCrossWeight);
  const rounded = restOf(withTurns(changed, roundedTurns), measured);
  return {
    turns,
    roundedTurns,
    ...alignmentBack(rounded, restOf(measured)),
    exact: restOf(withTurns(changed, turns), measured),
    rounded,
  };
}

/**
 * The seat turns alone.
 *
 * @throws Refusal when a wheel is in the air
 */
export function turnsBack(changed: CarAtRest, wanted: Stance, keepCrossWeight = true): TurnsBack {
  const now = requireOnFour(changed.rest);
  const start = stanceOf(now, now.load, keepCrossWeight);
  const goal = stanceOf(wanted, now.load, keepCrossWeight);
  const missing = goal.map((value, i) => value - (start[i] ?? 0));
  const perTurn = responsePerTurn(changed, keepCrossWeight, start);
  const four = keepCrossWeight ? solveLinear(perTurn, missing) : leastNorm(perTurn, missing);
  const turns = wheelsFrom(four);
  const roundedTurns = eachAxle(turns, (sides, end) =>
    eachSide(sides, (turn) => toStep(turn, changed.car[end].adjusters?.seatTurns?.step ?? 0)),
  );
  return { turns, roundedTurns };
}

/**
 * Camber and toe to add at each wheel, rad, so that alignment is again as it was.
 *
 * @example
 * const leaning = applyChange(demoCar, { lever: "camber", end: "front", by: -0.0043633 });
 * alignmentBack(restOf(leaning), restOf(demoCar)).camber.front.left
 * // → 0.00436, by hand: a quarter of a degree
 */
export function alignmentBack(
  now: Rest,
  before: Rest,
): { camber: Wheels<number>; toe: Wheels<number> } {
  const missing = (what: "camber" | "toe") =>
    eachAxle(now[what], (sides, end) =>
      eachSide(sides, (value, side) => before[what][end][side] - value),
    );
  return { camber: missing("camber"), toe: missing("toe") };
}

function toStep(value: number, step: number): number {
  return step > 0 ? Math.round(value / step) * step : value;
}

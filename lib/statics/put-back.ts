import type { Car } from "../car/car.js";
import { leastNorm, type Matrix, solveLinear, transpose } from "../linear.js";
import { eachAxle, sumOfWheels, type Wheels } from "../load/wheels.js";
import { eachSide, type Rest, restOf } from "./rest.js";

/** What the seats should restore: where the body stands and, if wanted, the cross weight. */
export type Stance = Pick<Rest, "heave" | "pitch" | "roll" | "crossShare">;

/** How to bring a changed car back to where it stood. */
export interface PutBack {
  /** Turns to make at each seat, exact; above zero raises that corner. */
  readonly turns: Wheels<number>;
  /** The same in steps of the adjuster, for the hand. */
  readonly roundedTurns: Wheels<number>;
  /** Camber to add at each wheel, rad, after the rounded turns. */
  readonly camber: Wheels<number>;
  /** Toe to add at each wheel, rad, after the rounded turns. */
  readonly toe: Wheels<number>;
  /** The car with the exact turns made. */
  readonly exact: Rest;
  /** The car with the rounded turns made: what rounding leaves. */
  readonly rounded: Rest;
}

const WHEELS = [
  ["front", "left"],
  ["front", "right"],
  ["rear", "left"],
  ["rear", "right"],
] as const;

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
 * @throws RangeError when a wheel is in the air: turns and heights are then not proportional
 */
export function putBack(
  changed: Car,
  measured: Car,
  wanted: Stance = restOf(measured),
  keepCrossWeight = true,
): PutBack {
  const now = restOnFour(changed, measured);
  const start = stanceOf(now, now.load, keepCrossWeight);
  const goal = stanceOf(wanted, now.load, keepCrossWeight);
  const missing = goal.map((value, i) => value - (start[i] ?? 0));
  const perTurn = responsePerTurn(changed, measured, keepCrossWeight, start);
  const four = keepCrossWeight ? solveLinear(perTurn, missing) : leastNorm(perTurn, missing);
  const turns = wheelsFrom(four);
  const roundedTurns = eachAxle(turns, (sides, end) =>
    eachSide(sides, (turn) => toStep(turn, changed[end].adjusters?.seatTurns?.step ?? 0)),
  );
  const rounded = restOf(withTurns(changed, roundedTurns), measured);
  return {
    turns,
    roundedTurns,
    ...alignmentBack(rounded, restOf(measured)),
    exact: restOf(withTurns(changed, turns), measured),
    rounded,
  };
}

/** The car with more turns at its spring seats. */
export function withTurns(car: Car, turns: Wheels<number>): Car {
  const ends = eachAxle(turns, (sides, end) => {
    const { spring } = car[end];
    const seatTurns = eachSide(sides, (more, side) => spring.seatTurns[side] + more);
    return { ...car[end], spring: { ...spring, seatTurns } };
  });
  return { ...car, ...ends };
}

/** Camber and toe to add at each wheel, rad, so that alignment is again as it was. */
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

/** What a stance is, as numbers that are proportional to seat turns. */
function stanceOf(
  { heave, pitch, roll, crossShare }: Stance,
  load: Wheels<number>,
  withCrossWeight: boolean,
): number[] {
  const body = [heave, pitch, roll];
  return withCrossWeight ? [...body, crossShare * sumOfWheels(load)] : body;
}

/** How one turn at each seat changes the stance: a row for each number of the stance. */
function responsePerTurn(
  car: Car,
  measured: Car,
  withCrossWeight: boolean,
  start: readonly number[],
): Matrix {
  const columns = WHEELS.map(([end, side]) => {
    const turned = withTurns(
      car,
      wheelsFrom(WHEELS.map(([e, s]) => (e === end && s === side ? 1 : 0))),
    );
    const rest = restOnFour(turned, measured);
    const stance = stanceOf(rest, rest.load, withCrossWeight);
    return stance.map((value, i) => value - (start[i] ?? 0));
  });
  return transpose(columns);
}

function restOnFour(car: Car, measured: Car): Rest {
  const rest = restOf(car, measured);
  for (const [end, side] of WHEELS)
    if (rest.load[end][side] <= 0)
      throw new RangeError(`The ${end} ${side} wheel is in the air: put that right first.`);
  return rest;
}

function wheelsFrom([fl = 0, fr = 0, rl = 0, rr = 0]: readonly number[]): Wheels<number> {
  return { front: { left: fl, right: fr }, rear: { left: rl, right: rr } };
}

function toStep(value: number, step: number): number {
  return step > 0 ? Math.round(value / step) * step : value;
}

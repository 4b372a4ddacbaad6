import type { Car } from "../car/car.js";
import { type Matrix, transpose } from "../linear.js";
import { eachAxle, sumOfWheels, type Wheels } from "../load/wheels.js";
import { Refusal } from "../refusal.js";
import { type CarAtRest, type Rest, restOf } from "./rest.js";
import { eachSide } from "./sides.js";

/** What the seats should restore: where the body stands and, if wanted, the cross weight. */
export type Stance = Pick<Rest, "heave" | "pitch" | "roll" | "crossShare">;

const WHEELS = [
  ["front", "left"],
  ["front", "right"],
  ["rear", "left"],
  ["rear", "right"],
] as const;

/**
 * The car with more turns at its spring seats.
 *
 * @example
 * withTurns(demoCar, { front: { left: 1, right: 0 }, rear: { left: 0, right: 0 } }).front.spring.seatTurns.left
 * // → 1
 */
export function withTurns(car: Car, turns: Wheels<number>): Car {
  const ends = eachAxle(turns, (sides, end) => {
    const { spring } = car[end];
    const seatTurns = eachSide(sides, (more, side) => spring.seatTurns[side] + more);
    return { ...car[end], spring: { ...spring, seatTurns } };
  });
  return { ...car, ...ends };
}

/** What a stance is, as numbers that are proportional to seat turns. */
export function stanceOf(
  { heave, pitch, roll, crossShare }: Stance,
  load: Wheels<number>,
  withCrossWeight: boolean,
): number[] {
  const body = [heave, pitch, roll];
  return withCrossWeight ? [...body, crossShare * sumOfWheels(load)] : body;
}

/** How one turn at each seat changes the stance: a row for each number of the stance. */
export function responsePerTurn(
  { car, measured }: CarAtRest,
  withCrossWeight: boolean,
  start: readonly number[],
): Matrix {
  const columns = WHEELS.map(([end, side]) => {
    const turned = withTurns(
      car,
      wheelsFrom(WHEELS.map(([e, s]) => (e === end && s === side ? 1 : 0))),
    );
    const rest = requireOnFour(restOf(turned, measured));
    const stance = stanceOf(rest, rest.load, withCrossWeight);
    return stance.map((value, i) => value - (start[i] ?? 0));
  });
  return transpose(columns);
}

/**
 * Passes through how a car stands.
 *
 * @throws Refusal when a wheel is in the air: turns and heights are then not proportional
 */
export function requireOnFour(rest: Rest): Rest {
  for (const [end, side] of WHEELS)
    if (rest.load[end][side] <= 0)
      throw new Refusal(
        "wheel-in-the-air",
        `The ${end} ${side} wheel is in the air: put that right first.`,
      );
  return rest;
}

/** Four numbers, front left first, as one for each wheel. */
export function wheelsFrom([fl = 0, fr = 0, rl = 0, rr = 0]: readonly number[]): Wheels<number> {
  return { front: { left: fl, right: fr }, rear: { left: rl, right: rr } };
}

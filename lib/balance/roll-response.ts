import type { CarInRoll } from "../load/car-in-roll.js";
import { type AxleHeld, rollEquilibrium } from "../load/roll-equilibrium.js";
import type { Axles } from "../load/wheels.js";

/** What rolls a car: each value per m/s² of lateral acceleration, or per N·m. */
export interface Responses {
  /** rad of the body against the road */
  readonly body: number;
  /** rad between body and wheels */
  readonly suspension: number;
  /** N·m that the tyres move from left to right */
  readonly moment: number;
}

/** How one axle answers to each thing that rolls the car. */
export interface AxleResponse {
  readonly turn: Responses;
  /** a moment between body and front axle, from dampers or stops */
  readonly extraFront: Responses;
  readonly extraRear: Responses;
  /** the moment of an axle whose inner tyre has no more to give; nothing while it is down */
  readonly givenFront: Responses;
  readonly givenRear: Responses;
}

/** How both axles of a car answer while the same wheels stay on the ground. */
export type RollResponse = Axles<AxleResponse>;

const NEXT_TO_NOTHING = 1e-9; // N·m of a lifted axle, whose sign alone counts

/**
 * The balance of roll solved once for all lateral accelerations and moments: it is linear while the
 * same wheels stay on the ground, and near one lateral acceleration once one is off it.
 *
 * @param lifting - m/s² that acts on what an axle with a wheel off the ground lifts
 * @returns nothing when springs and tyres cannot hold the body
 */
export function rollResponse(
  car: CarInRoll,
  lifted: Axles<boolean>,
  lifting = 0,
): RollResponse | undefined {
  const held = (end: "front" | "rear", extra: number, given: number): AxleHeld =>
    lifted[end] ? { extra, given: Math.max(NEXT_TO_NOTHING, given), lifting } : { extra };
  const cases: readonly (readonly [number, number, number, number, number])[] = [
    [1, 0, 0, 0, 0],
    [0, 1, 0, 0, 0],
    [0, 0, 1, 0, 0],
    [0, 0, 0, 1, 0],
    [0, 0, 0, 0, 1],
  ];
  const solved = cases.map(([ay, extraFront, extraRear, givenFront, givenRear]) =>
    rollEquilibrium(car, ay, {
      front: held("front", extraFront, givenFront),
      rear: held("rear", extraRear, givenRear),
    }),
  );
  const at = (end: "front" | "rear", i: number): Responses => {
    const found = solved[i];
    if (found === undefined) return nothing;
    const body = found.body[end];
    return { body, suspension: body - found.tyres[end], moment: found.moment[end] };
  };
  if (solved.includes(undefined)) return undefined;
  const axle = (end: "front" | "rear"): AxleResponse => ({
    turn: at(end, 0),
    extraFront: at(end, 1),
    extraRear: at(end, 2),
    givenFront: at(end, 3),
    givenRear: at(end, 4),
  });
  return { front: axle("front"), rear: axle("rear") };
}

const nothing: Responses = { body: 0, suspension: 0, moment: 0 };

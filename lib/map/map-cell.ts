import { type BalanceStart, type CarBalance, carBalance } from "../balance/car-balance.js";
import { parameters } from "../parameters.js";
import { Refusal } from "../refusal.js";
import { isLimited, type Margin, marginsOf } from "../statics/margins.js";
import { carOnMap, type MapOf, valueAt } from "./map-of.js";

/**
 * Whether there is a balance to draw at a place: the car is balanced there, or tips over before its
 * tyres let go, or cannot brake or drive so hard, or cannot stand or drive at all.
 */
export const placeStates = ["balanced", "tips", "cannot give", "cannot stand"] as const;
export type PlaceState = (typeof placeStates)[number];

/** One place of a map, worked out in full. */
export interface MapCell {
  /** m/s², as `CarBalance.understeerMargin`; 0 where the car cannot stand */
  readonly understeerMargin: number;
  /** m/s², as `CarBalance.lateralAcceleration`; 0 where the car cannot stand */
  readonly lateralAcceleration: number;
  /** steps inside each limit of the class, below 0 outside; none without limits */
  readonly rooms: readonly number[];
  readonly state: PlaceState;
  /** where the search at a place beside may begin; nothing where there is no balance */
  readonly start?: BalanceStart | undefined;
}

/**
 * What the car of a map does at two places, both 0–1.
 *
 * @param start - of a place beside: sooner, but it may follow what is no longer the hardest turn
 */
export function cellAt(
  of: MapOf,
  { x, y }: { readonly x: number; readonly y: number },
  start?: BalanceStart,
): MapCell {
  try {
    return cellOf(workedOut(of, valueAt(of.along, x), valueAt(of.up, y), start));
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { understeerMargin: 0, lateralAcceleration: 0, rooms: [], state: "cannot stand" };
  }
}

interface WorkedOut {
  readonly balance: CarBalance;
  readonly margins: readonly Margin[];
}

/** The car with both levers at two values, SI. @throws Refusal when it cannot stand so */
export function workedOut(of: MapOf, x: number, y: number, start?: BalanceStart): WorkedOut {
  const standing = carOnMap(of, x, y);
  return {
    balance: carBalance(standing.handling, of.driving, start),
    margins: isLimited(standing.car) ? marginsOf(standing) : [],
  };
}

function cellOf({ balance, margins }: WorkedOut): MapCell {
  const { understeerMargin, lateralAcceleration, tips, given } = balance;
  return {
    understeerMargin,
    lateralAcceleration,
    rooms: margins.map(inSteps),
    state: !given ? "cannot give" : tips ? "tips" : "balanced",
    start: given && !tips ? balance : undefined,
  };
}

const inSteps = ({ margin, parameter }: Margin): number => margin / parameters[parameter].step;

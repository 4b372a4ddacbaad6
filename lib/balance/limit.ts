import { requireInRange } from "../check.js";
import { axleLoads, type CarInRoll } from "../load/car-in-roll.js";
import { distributeLoadTransfer } from "../load/distribution.js";
import { tippingAcceleration } from "../load/tipping.js";
import { rolledInTurn } from "../load/wheel-lift.js";
import type { Axles } from "../load/wheels.js";
import { GRAVITY } from "../units.js";
import { hardestTurn } from "./hardest-turn.js";

/** Greatest side force of a tyre at a load, N from N. */
export type Grip = (load: number) => number;

/** How fast a car can turn, and which end says so. */
export interface LimitBalance {
  /** m/s² at which each axle's tyres have nothing left */
  readonly axle: Axles<number>;
  /** m/s² of the car: the smaller of the two, or where it tips over */
  readonly lateralAcceleration: number;
  /** Which end gives up first; "both" when neither is ahead. */
  readonly first: "front" | "rear" | "both";
  /** m/s² that the rear axle has left when the front has none: above 0 understeer, below oversteer */
  readonly understeerMargin: number;
  /** The car tips over before its tyres let go. */
  readonly tips: boolean;
}

/**
 * The limit of a car in a steady turn, from the grip that both tyres of each axle have at their
 * real loads.
 *
 * @param car - as for `distributeLoadTransfer`
 * @param grip - greatest side force of one tyre of each axle at a load
 * @throws Refusal as `distributeLoadTransfer`, and when an axle would hold a turn of 100 m/s²
 * @example
 * const even = (load) => 1.1 * load;
 * limitBalance(carInRoll(demoCar), { front: even, rear: even }).lateralAcceleration
 * // → 10.787, by hand: 1.1·9.80665
 */
export function limitBalance(car: CarInRoll, grip: Axles<Grip>): LimitBalance {
  const axle = { front: axleLimit(car, grip, "front"), rear: axleLimit(car, grip, "rear") };
  const [least, margin] = [Math.min(axle.front, axle.rear), axle.rear - axle.front];
  const tip = tipsWithin(car, least);
  return {
    axle,
    lateralAcceleration: Math.min(least, tip),
    first: Math.abs(margin) < 1e-9 ? "both" : margin > 0 ? "front" : "rear",
    understeerMargin: margin,
    tips: tip < least,
  };
}

/**
 * Side force that both tyres of an axle can make in a turn, N.
 *
 * @example
 * axleGrip(carInRoll(demoCar), gripOf(demoCar).front, "front", 0)
 * // → 6399.1, by hand: 2·2752.6·(1.30 − 0.05·2.7526)
 */
export function axleGrip(
  car: CarInRoll,
  grip: Grip,
  end: "front" | "rear",
  lateralAcceleration: number,
): number {
  const { left, right } = distributeLoadTransfer(car, lateralAcceleration)[end].load;
  return grip(left) + grip(right);
}

/** Lateral acceleration at which an axle needs all its grip to carry its share of the mass, m/s². */
function axleLimit(car: CarInRoll, grip: Axles<Grip>, end: "front" | "rear"): number {
  const mass = axleLoads({ ...car, longitudinalTransfer: 0 })[end] / GRAVITY;
  requireInRange(`${end} grip`, axleGrip(car, grip[end], end, 0), 0, Infinity, "N");
  const half = axleLoads(car)[end] / 2;
  const left = (ay: number) => {
    const moved = transferOf(car, end, half, ay);
    return grip[end](half - moved) + grip[end](half + moved) - mass * ay;
  };
  return hardestTurn(left, 1e-10);
}

/** Load that one axle of a car that was checked moves in a turn, N: all it has with a wheel up. */
function transferOf(car: CarInRoll, end: "front" | "rear", half: number, ay: number): number {
  const state = rolledInTurn(car, Math.abs(ay), undefined, 0);
  if (state === undefined) return half; // it was found to stand, so this does not happen
  const moved = Math.abs(state.moment[end]) / car[end].track;
  return Math.min(half, moved);
}

const MARGIN = 1.3; // far more than what large angles take off the threshold of small ones

/** Tipping threshold of a car that may be below its limit, m/s²; Infinity for one far from it. */
function tipsWithin(car: CarInRoll, limit: number): number {
  if (!distributeLoadTransfer(car, MARGIN * limit).tipped) return Infinity;
  return tippingAcceleration(car);
}

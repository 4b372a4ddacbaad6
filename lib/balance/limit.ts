import { requireInRange } from "../check.js";
import { axleLoads, type CarInRoll } from "../load/car-in-roll.js";
import { distributeLoadTransfer } from "../load/distribution.js";
import { tippingAcceleration } from "../load/tipping.js";
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
 * @throws RangeError as `distributeLoadTransfer`, and when an axle would hold a turn of 100 m/s²
 */
export function limitBalance(car: CarInRoll, grip: Axles<Grip>): LimitBalance {
  const axle = { front: axleLimit(car, grip, "front"), rear: axleLimit(car, grip, "rear") };
  const [least, margin] = [Math.min(axle.front, axle.rear), axle.rear - axle.front];
  const tip = tippingAcceleration(car);
  return {
    axle,
    lateralAcceleration: Math.min(least, tip),
    first: Math.abs(margin) < 1e-9 ? "both" : margin > 0 ? "front" : "rear",
    understeerMargin: margin,
    tips: tip < least,
  };
}

/** Side force that both tyres of an axle can make in a turn, N. */
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
  const left = (ay: number) => axleGrip(car, grip[end], end, ay) - mass * ay;
  requireInRange(`${end} grip`, left(0), 0, Infinity, "N");
  return hardestTurn(left, 1e-10);
}

import { GRAVITY } from "../units.js";
import { type LateralCase, lateralLoadTransfer } from "./transfer.js";
import type { Sides } from "./wheels.js";

/**
 * Load on the two left and on the two right wheels of a stiff car in a turn, N.
 *
 * The sides sum to the weight. Past the lift of the inside wheels the outside ones carry it all;
 * the car is then tipping over and not in balance.
 *
 * @throws Refusal as `lateralLoadTransfer`
 * @example
 * sideLoads({ mass: 1000, lateralAcceleration: 5, centreOfGravityHeight: 0.5, track: 1.5 }).right
 * // → 6570.0, by hand: ½·9806.65 + 1000·5·0.5/1.5
 */
export function sideLoads(car: LateralCase): Sides<number> {
  const half = (car.mass * GRAVITY) / 2;
  const moved = Math.max(-half, Math.min(half, lateralLoadTransfer(car)));
  return { left: half - moved, right: half + moved };
}

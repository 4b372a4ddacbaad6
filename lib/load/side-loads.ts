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
 */
export function sideLoads(car: LateralCase): Sides<number> {
  const half = (car.mass * GRAVITY) / 2;
  const moved = Math.max(-half, Math.min(half, lateralLoadTransfer(car)));
  return { left: half - moved, right: half + moved };
}

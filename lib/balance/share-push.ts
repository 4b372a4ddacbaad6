import type { Sides } from "../load/wheels.js";

/**
 * How the two tyres of an axle share a push or a braking force, N.
 *
 * Half each while both can. A tyre that comes near the most it could push by itself is eased off,
 * and the other one does the rest: no wheel locks or spins. So brakes behave that a driver or an
 * anti-lock system keeps from locking, and an axle with a locked or limited-slip differential; an
 * open one would give the axle at most twice what its weaker tyre can do.
 *
 * @param push - N of both together, above 0 driving
 * @param most - N that each tyre could push straight ahead, at least 0
 */
export function sharePush(push: number, most: Sides<number>): Sides<number> {
  const left = eased(push / 2, most.left);
  const right = eased(push / 2, most.right);
  return most.left < most.right ? { left, right: push - left } : { left: push - right, right };
}

/** Nearly the push while it is small, and never more than there is: x / (1 + (x/m)⁶)^⅙. */
function eased(push: number, most: number): number {
  if (most <= 0) return 0;
  const square = (push / most) * (push / most);
  return push / Math.cbrt(Math.sqrt(1 + square * square * square));
}

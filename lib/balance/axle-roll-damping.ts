import type { Axle } from "../car/car.js";

/**
 * Damping of both dampers of an axle in roll, N·m·s/rad: one goes in while the other comes out.
 *
 * Like the roll stiffness of a pair of springs, ½·c·t² with c the mean of bump and rebound at the
 * wheel – Milliken 1995, ch. 22.
 */
export function axleRollDamping({ damper, spring, track }: Axle): number {
  const atWheel = (damper.motionRatio ?? spring.motionRatio) ** 2;
  const mean = ((damper.bump + damper.rebound) / 2) * atWheel;
  return 0.5 * mean * (spring.spacing ?? track) ** 2;
}

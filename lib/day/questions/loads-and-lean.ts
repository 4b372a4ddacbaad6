import { axleLoadsOf } from "../../car/axle-loads.js";
import type { Car } from "../../car/car.js";

/** What a change of the car does in one turn to the load that goes outside, N, and to the lean, rad. */
export function loadsAndLean(before: Car, after: Car, turn: number) {
  const [old, now] = [axleLoadsOf(before, turn), axleLoadsOf(after, turn)];
  return {
    turn,
    total: { before: old.total, after: now.total },
    lean: { before: old.rollAngle.front, after: now.rollAngle.front },
    /** Share by which the total has grown. */
    change: now.total / old.total - 1,
  };
}

import { requireInRange } from "../check.js";
import { type Axles, eachAxle } from "./wheels.js";

/**
 * Shares a load transfer between the axles by a given share, N.
 *
 * No axle moves more than half its load: what its lifted inside wheel cannot give, the other takes.
 *
 * @returns transfers that sum to the total, unless the car has no more to move
 * @throws Refusal when a number is outside its range
 * @example
 * shareTransfer({ total: 1000, frontShare: 0.6, axleLoads: { front: 5000, rear: 5000 } }).front
 * // → 600
 */
export function shareTransfer({
  total,
  frontShare,
  axleLoads,
}: {
  /** N moved by both axles together, at least 0 */
  total: number;
  /** share asked of the front axle, 0–1 */
  frontShare: number;
  /** N on both tyres of each axle */
  axleLoads: Axles<number>;
}): Axles<number> {
  requireInRange("total transfer", total, 0, 1e6, "N");
  requireInRange("front share", frontShare, 0, 1);
  const most = eachAxle(
    axleLoads,
    (load, end) => requireInRange(`${end} load`, load, 0, 1e6, "N") / 2,
  );
  const asked = Math.min(most.front, total * frontShare);
  const rear = Math.min(most.rear, total - asked);
  return { front: Math.min(most.front, total - rear), rear };
}

import { requireInRange } from "../check.js";

/**
 * Turns of both spring seats of an axle that raise its ride height, above 0 for taller seats.
 *
 * With both sides alike the spring load stays, so the body goes up by seat travel over motion ratio.
 *
 * @param heightChange - m, above 0 up
 * @param motionRatio - spring travel over wheel travel, above 0
 * @param travelPerTurn - m that a seat rises in one turn, above 0
 * @example
 * seatTurnsForHeight(0.01, 0.65, 1.5e-3) // → 4.333, by hand: 0.01·0.65/0.0015
 */
export function seatTurnsForHeight(
  heightChange: number,
  motionRatio: number,
  travelPerTurn: number,
): number {
  requireInRange("height change", heightChange, -0.5, 0.5, "m");
  requireInRange("motion ratio", motionRatio, 0.01, 10);
  requireInRange("seat travel per turn", travelPerTurn, 1e-5, 0.1, "m");
  return (heightChange * motionRatio) / travelPerTurn;
}

import { Refusal } from "../refusal.js";
import { findRoot } from "../solve.js";

const GREATEST = 100; // m/s², far above any tyre on a road

/**
 * The turn that uses up all the side force there is, m/s².
 *
 * @param spare - side force left over in a turn of so many m/s², N; above 0 when driving straight on
 * @param tolerance - m/s²
 * @throws Refusal when even a turn of 100 m/s² leaves some
 */
export function hardestTurn(
  spare: (lateralAcceleration: number) => number,
  tolerance: number,
): number {
  if (spare(GREATEST) > 0) {
    throw new Refusal(
      "no-turn",
      `These tyres would hold a turn of more than ${GREATEST} m/s²: with so much grip or downforce this is no car on tyres.`,
    );
  }
  return findRoot(spare, 0, GREATEST, tolerance);
}

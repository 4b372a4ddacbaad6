import type { Car } from "../car/car.js";
import type { Change } from "../change/change.js";
import { restOf } from "../statics/rest.js";
import { differenceOfSetUps } from "./difference.js";

/** Ride height that rounded seat turns may leave when the car is put back, m. */
const LEFT_BY_ROUNDING = 2e-3;

/**
 * The changes that a run tests against another: what differs, without the seat turns that only put
 * the car back to its height. One: a clean test. More: confounded. None: nothing was changed.
 *
 * @param measured - the car whose file gave the heights
 */
export function testedChanges(before: Car, after: Car, measured: Car): Change[] {
  const changes = apart(differenceOfSetUps(before, after).changes);
  const others = changes.filter(({ lever }) => lever !== "seatTurns");
  const seatsOnlyPutBack = others.length > 0 && standsAlike(before, after, measured);
  return seatsOnlyPutBack ? others : changes;
}

/** Both sides of one lever at one end are one change. */
function apart(changes: readonly Change[]): Change[] {
  const key = (change: Change) => `${change.lever} ${"end" in change ? change.end : ""}`;
  return changes.filter((change, i) => changes.findIndex((c) => key(c) === key(change)) === i);
}

function standsAlike(before: Car, after: Car, measured: Car): boolean {
  const [was, is] = [restOf(before, measured).rideHeight, restOf(after, measured).rideHeight];
  const near = (a: number, b: number) => Math.abs(a - b) <= LEFT_BY_ROUNDING;
  return (
    near(was.front.left, is.front.left) &&
    near(was.front.right, is.front.right) &&
    near(was.rear.left, is.rear.left) &&
    near(was.rear.right, is.rear.right)
  );
}

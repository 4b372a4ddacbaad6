import type { Change } from "../../change/change.js";
import type { Wheels } from "../../load/wheels.js";
import type { CarAtRest } from "../../statics/rest.js";
import { differenceOfSetUps } from "./difference.js";

/** What rounding to a step may leave when a car is put back: heights, camber, toe. */
const LEFT = { height: 2e-3, camber: 1.5e-3, toe: 6e-4 } as const; // m, rad, rad

/**
 * The changes that a run tests against another: what differs, without the seat turns, camber and
 * toe that only put the car back to how it stood. One: a clean test. More: confounded. None:
 * nothing was changed.
 */
export function testedChanges(before: CarAtRest, after: CarAtRest): Change[] {
  const changes = apart(differenceOfSetUps(before.car, after.car).changes);
  if (changes.length < 2) return changes;
  const [was, is] = [before.rest, after.rest];
  const alike: Readonly<Partial<Record<Change["lever"], boolean>>> = {
    seatTurns: wheelsNear(was.rideHeight, is.rideHeight, LEFT.height),
    camber: wheelsNear(was.camber, is.camber, LEFT.camber),
    toe: wheelsNear(was.toe, is.toe, LEFT.toe),
  };
  return changes.filter(({ lever }) => alike[lever] !== true);
}

/** Both sides of one lever at one end are one change. */
function apart(changes: readonly Change[]): Change[] {
  const key = (change: Change) => `${change.lever} ${"end" in change ? change.end : ""}`;
  return changes.filter((change, i) => changes.findIndex((c) => key(c) === key(change)) === i);
}

function wheelsNear(a: Wheels<number>, b: Wheels<number>, left: number): boolean {
  const near = (x: number, y: number) => Math.abs(x - y) <= left;
  return (
    near(a.front.left, b.front.left) &&
    near(a.front.right, b.front.right) &&
    near(a.rear.left, b.rear.left) &&
    near(a.rear.right, b.rear.right)
  );
}

import { requireInRange } from "../check.js";
import type { StandingAxle } from "./axle-in-space.js";

/** Forces of the road on both tyres of an axle, N, > 0 to the left. */
export interface SideForces {
  readonly left: number;
  readonly right: number;
}

/** Vertical forces of the road that reach the body through the links, not the springs, N. */
export interface LinkForces {
  /** On the left tyre, > 0 up: adds to its load. */
  readonly left: number;
  /** On the right tyre, > 0 up. */
  readonly right: number;
  /** Jacking: both together, > 0 lifts the body. */
  readonly jacking: number;
  /** Load moved from the left tyre to the right one, N. */
  readonly transferToRight: number;
}

/**
 * What the links turn side forces into, from the true split between both tyres.
 *
 * Virtual work: a patch that moves sideways by s for each metre it rises carries −F·s through
 * its links. On a beam axle each side force loads both tyres.
 *
 * @throws Refusal when a force is not a number within ±1 000 000 N
 */
export function linkForces(axle: StandingAxle, forces: SideForces): LinkForces {
  const fromLeft = requireInRange("left side force", forces.left, -1e6, 1e6, "N");
  const fromRight = requireInRange("right side force", forces.right, -1e6, 1e6, "N");
  const leftSlope = axle.left.own.sideways; // of the left patch while the left wheel rises
  const rightSlope = axle.right.own.sideways;
  const rightWithLeft = axle.right.other?.sideways ?? 0; // right patch, left wheel rising
  const leftWithRight = axle.left.other?.sideways ?? 0;
  const left = -fromLeft * leftSlope - fromRight * rightWithLeft; // δW = 0
  const right = -fromRight * rightSlope - fromLeft * leftWithRight;
  return { left, right, jacking: left + right, transferToRight: (right - left) / 2 };
}

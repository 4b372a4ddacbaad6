import { requireInRange } from "../check.js";

/** Side forces on the tyres of one axle, and the height at which its links pass them on. */
export interface AxleSideForces {
  /** Side force on the outer tyre, N, > 0 towards the inside of the turn. */
  readonly outerSideForce: number;
  /** Side force on the inner tyre, N, > 0 towards the inside of the turn. */
  readonly innerSideForce: number;
  /** Roll centre height, m, > 0 above the ground, −1 … 2. */
  readonly rollCentreHeight: number;
  /** Track, m, 0.2 … 4. */
  readonly track: number;
}

/** Vertical forces that the links of one axle exchange with the body, N, > 0 upwards on the body. */
export interface Jacking {
  /** From the outer wheel's links: lifts when the roll centre is above the ground. */
  readonly outer: number;
  /** From the inner wheel's links: pulls down when the roll centre is above the ground. */
  readonly inner: number;
  /** Sum of both: what lifts the body (or pulls it down). */
  readonly total: number;
  /** Load moved from the inner to the outer tyre through the links, N. */
  readonly transfer: number;
}

/**
 * Jacking: the part of the side force that the slanted line to the instant centre turns upwards.
 *
 * Each wheel passes on its side force times the slope h/(t/2). Their sum lifts the body when the
 * outer tyre carries more; their difference is the load transfer through the links,
 * (F_outer + F_inner)·h/t, which does not depend on how the tyres split the side force.
 * Symmetrical axle, both slopes alike: not for a rolled linkage, whose wheels have a height each.
 *
 * @throws Refusal naming the field outside its range
 * @example
 * jacking({ outerSideForce: 4000, innerSideForce: 2000, rollCentreHeight: 0.05, track: 1.5 }).total
 * // → 133.33, by hand: (4000 − 2000)·2·0.05/1.5
 */
export function jacking(axle: AxleSideForces): Jacking {
  const { outerSideForce, innerSideForce, rollCentreHeight, track } = axle;
  const outer = wheelJacking(outerSideForce, rollCentreHeight, track);
  const inner = -wheelJacking(innerSideForce, rollCentreHeight, track);
  return {
    outer,
    inner,
    total: outer + inner, // J = (Fy_out − Fy_in)·2h/t
    transfer: (outer - inner) / 2,
  };
}

/**
 * Upward force on the body from one wheel's links, N.
 *
 * @param inwardSideForce - side force on the tyre, N, > 0 towards the car's middle
 * @param height - height of its line to the instant centre at the middle of the track, m
 * @param track - m
 */
function wheelJacking(inwardSideForce: number, height: number, track: number): number {
  requireInRange("side force", inwardSideForce, -1e6, 1e6, "N");
  requireInRange("roll centre height", height, -1, 2, "m");
  requireInRange("track", track, 0.2, 4, "m");
  return (inwardSideForce * height) / (track / 2);
}

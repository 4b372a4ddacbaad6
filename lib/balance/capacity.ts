import { findPeak } from "../solve.js";
import type { AxleInTurn } from "./axle-in-turn.js";
import { axleSideForce } from "./axle-side-force.js";
import { hardestTurn } from "./hardest-turn.js";

/** The hardest turn an axle can hold, and the slopes found there, for a quick start next time. */
export interface Capacity {
  /** m/s² */
  readonly lateralAcceleration: number;
  /** rad, of the axle without toe */
  readonly slipAngle: number;
  /** N/rad²: how side force bends at its peak, below zero */
  readonly curvature: number;
  /** N per m/s²: how the peak changes as the turn tightens and load moves over */
  readonly loadEffect: number;
}

/** m/s²: a step this short is the last one; what is left is some fifty times smaller. */
export const CAPACITY_TOLERANCE = 5e-6;
const RADIANS_PER_TOLERANCE = 20; // a slip angle this far off its peak costs far less than that
const SMALL_ANGLE = 1e-4; // rad, for a difference
const SMALL_TURN = 1e-3; // m/s², for a difference
const FAR = 0.05; // a step, m/s² or rad, after which slopes are looked at again
const LONGEST_STEP = 0.05; // rad
const WIDEST_ANGLE = 0.9; // rad

/** Somewhere to begin when nothing is known. */
export const coldStart: Capacity = {
  lateralAcceleration: 8,
  slipAngle: 0.13,
  curvature: 0,
  loadEffect: 0,
};

/**
 * The lateral acceleration at which an axle gives all it has: max over α of F(α, ay) = m·ay.
 *
 * Slip angle and lateral acceleration are found together by Newton steps: F bends like a parabola
 * near its peak, so its top lies F′²/2F″ above, and there only the loads still change it. A start
 * from a similar car takes three or four steps.
 *
 * @param tolerance - m/s², the length of the last step
 */
export function axleCapacity(
  axle: AxleInTurn,
  start: Capacity = coldStart,
  tolerance = CAPACITY_TOLERANCE,
): Capacity {
  let { slipAngle, lateralAcceleration: ay, curvature, loadEffect } = start;
  const angleTolerance = RADIANS_PER_TOLERANCE * tolerance;
  let before = 0;
  for (let i = 0; i < 40; i++) {
    const { force, slope } = axleSideForce(axle, slipAngle, ay);
    if (curvature >= 0 || before > FAR) {
      const beside = axleSideForce(axle, slipAngle + SMALL_ANGLE, ay);
      curvature = (beside.slope - slope) / SMALL_ANGLE;
      const tighter = axleSideForce(axle, slipAngle, ay + SMALL_TURN);
      loadEffect = (tighter.force - force) / SMALL_TURN;
    }
    if (!(curvature < 0 && loadEffect < axle.mass)) break;
    const angleStep = -slope / curvature;
    const top = force + 0.5 * slope * angleStep; // F − F′²/2F″
    const turnStep = (top - axle.mass * ay) / (axle.mass - loadEffect);
    const step = Math.abs(angleStep) + Math.abs(turnStep);
    before = step > before * 0.5 && i > 0 ? Infinity : step; // steps that do not shrink: look again
    slipAngle += Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, angleStep));
    ay = Math.max(0, ay + turnStep);
    if (Math.abs(turnStep) < tolerance && Math.abs(angleStep) < angleTolerance)
      return { slipAngle, lateralAcceleration: ay, curvature, loadEffect };
  }
  return searchCapacity(axle);
}

/** The same by safe and slow searches, for axles far from ordinary. */
export function searchCapacity(axle: AxleInTurn): Capacity {
  const best = (ay: number) =>
    findPeak((angle) => axleSideForce(axle, angle, ay).force, 0, WIDEST_ANGLE, 1e-7);
  const spare = (ay: number) => best(ay).value - axle.mass * ay;
  const cannot = { lateralAcceleration: 0, slipAngle: 0, curvature: 0, loadEffect: 0 };
  if (!(spare(0) > 0)) return cannot;
  const lateralAcceleration = hardestTurn(spare, 1e-9);
  return { ...cannot, lateralAcceleration, slipAngle: best(lateralAcceleration).at };
}

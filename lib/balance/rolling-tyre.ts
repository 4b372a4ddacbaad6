import { findRoot } from "../solve.js";
import { peakSlip } from "../tyre/magic-formula.js";
import type { MagicFormula61Coefficients } from "../tyre/magic-formula-61-coefficients.js";
import {
  combinedForce61,
  combinedLongitudinalForce61,
  type PlaneForce,
} from "../tyre/magic-formula-61-combined.js";
import {
  longitudinalForceCurve,
  longitudinalFriction,
} from "../tyre/magic-formula-61-longitudinal.js";
import { isLoaded } from "../tyre/valid-range.js";

/** A tyre that rolls at a slip angle and may be driven or braked. */
export interface RollingTyre {
  readonly coefficients: MagicFormula61Coefficients;
  /** N, inside the tyre's range */
  readonly load: number;
  /** Pa above atmosphere, inside the tyre's range */
  readonly pressure: number;
  /** rad, inside the tyre's range, above 0 leaning to the left */
  readonly inclination: number;
  /** rad, above 0 makes a force to the left */
  readonly slipAngle: number;
}

/** Slip and force of a tyre at work. */
export interface PushingTyre {
  readonly slip: number;
  readonly force: PlaneForce;
}

const idle: PushingTyre = { slip: 0, force: { longitudinal: 0, side: 0 } };
const SMALL_SLIP = 1e-6;
const LONGEST_STEP = 0.05;
const TOLERANCE = 1e-7; // N

/** The push at a slip, N. */
function pushAt(tyre: RollingTyre, slip: number): number {
  const { coefficients, load, pressure, inclination, slipAngle } = tyre;
  return combinedLongitudinalForce61(coefficients, slip, slipAngle, load, pressure, inclination);
}

function working(tyre: RollingTyre, slip: number): PushingTyre {
  const { coefficients, load, pressure, inclination, slipAngle } = tyre;
  const force = combinedForce61(coefficients, slip, slipAngle, load, pressure, inclination);
  return { slip, force };
}

/** The most a tyre could push straight ahead, N. */
export function mostPush({ coefficients, load, pressure, inclination }: RollingTyre): number {
  return load * longitudinalFriction(coefficients, load, pressure, inclination);
}

/**
 * Pushes or brakes with a force, or with as much as the tyre has.
 *
 * No wheel is spun or locked: one that has no more stays where a straight-rolling tyre pushes most.
 *
 * @param wanted - N, above 0 driving, below 0 braking
 * @param start - slip to begin with; 0 when unknown
 */
export function pushWith(tyre: RollingTyre, wanted: number, start = 0): PushingTyre {
  if (!isLoaded(tyre.load)) return idle;
  let [before, slip] = [start, start + SMALL_SLIP];
  let pushBefore = pushAt(tyre, before);
  for (let i = 0; i < 12; i++) {
    const push = pushAt(tyre, slip);
    if (Math.abs(wanted - push) < TOLERANCE) return working(tyre, slip);
    const stiffness = (push - pushBefore) / (slip - before); // secant
    const step = (wanted - push) / stiffness;
    if (!(stiffness > 0) || Math.abs(step) > LONGEST_STEP) break; // near or past the peak
    [before, slip, pushBefore] = [slip, slip + step, push];
  }
  return pushSurely(tyre, wanted);
}

/** The same, searched between rolling freely and the greatest slip allowed. */
function pushSurely(tyre: RollingTyre, wanted: number): PushingTyre {
  const { coefficients, load, pressure, inclination } = tyre;
  const most = peakSlip(longitudinalForceCurve(coefficients, load, pressure, inclination));
  const limit = wanted < 0 ? -most : most;
  const short = (slip: number) => pushAt(tyre, slip) - wanted;
  const free = wanted < 0 ? most : -most; // a tyre with a push of its own rolls freely beside zero
  const within = short(limit) * short(free) < 0;
  const slip = within ? findRoot(short, free, limit, 1e-12) : limit;
  return working(tyre, slip);
}

import { type FillableCurve, flatCurve, magicFormula } from "./magic-formula.js";
import { slipAngleRange, slipRange } from "./magic-formula-61.js";
import type { MagicFormula61Coefficients } from "./magic-formula-61-coefficients.js";
import { fillLongitudinalForceCurve } from "./magic-formula-61-longitudinal.js";
import { fillMoment, flatMoment, type MomentCurve, momentAt } from "./magic-formula-61-moment.js";
import { fillSideForceCurve, loadIncrement } from "./magic-formula-61-side.js";
import { fillAlongHill, fillSideHill, flatHill, type Hill, leftOf } from "./slip-hill.js";
import { clampTo, isLoaded } from "./valid-range.js";

/**
 * A tyre at one load, pressure and lean, with all worked out that does not depend on its slip.
 *
 * For solvers that ask one tyre many times; to be filled again, so that nothing is allocated.
 */
export interface PreparedWheel {
  /** N, held inside the tyre's range; 0 in the air. */
  load: number;
  /** Curves of pure slip. */
  readonly along: FillableCurve;
  readonly side: FillableCurve;
  /** What slip across leaves of the push, and slip along of the side force. */
  readonly alongLeft: Hill;
  readonly sideLeft: Hill;
  /** Side force that braking or drive makes by itself, N, and its shape – eqs 4.E66, 4.E67. */
  readonly pull: { most: number; falling: number; shape: number; steepness: number };
  /** What the moment needs, worked out when one is first asked for. */
  readonly moment: MomentCurve;
  momentWaits: MagicFormula61Coefficients | undefined;
  pressure: number;
  inclination: number;
  /** B·slip at the top of the longitudinal curve, its tan(π/2C), and the C and E it was found for. */
  readonly top: { reach: number; target: number; shape: number; curvature: number };
}

/** A wheel in the air, to be prepared. */
export function newWheel(): PreparedWheel {
  return {
    load: 0,
    along: flatCurve(),
    side: flatCurve(),
    alongLeft: flatHill(),
    sideLeft: flatHill(),
    pull: { most: 0, falling: 0, shape: 0, steepness: 0 },
    moment: flatMoment(),
    momentWaits: undefined,
    pressure: 0,
    inclination: 0,
    top: { reach: 0, target: 0, shape: 0, curvature: 0 },
  };
}

const LIGHTEST = 1e-3; // N: shapes of a wheel in the air are those of its first touch
const steepest = Math.tan(slipAngleRange.maximum);
const tanRange = { minimum: -steepest, maximum: steepest };

/**
 * Works out a wheel; states outside the tyre's range are held at its edge, as `FullTyre` does.
 *
 * @param into - the wheel to fill
 * @param load - N; at or below zero the wheel is in the air and gives nothing
 * @param pressure - Pa above atmosphere
 * @param inclination - rad, above zero leans to the left
 */
export function prepareWheel(
  into: PreparedWheel,
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination: number,
): void {
  const held = clampTo(t.valid.load, load);
  into.load = isLoaded(held) ? held : 0;
  const Fz = Math.max(LIGHTEST, into.load);
  into.pressure = clampTo(t.valid.pressure, pressure);
  into.inclination = clampTo(t.valid.inclination, inclination);
  fillLongitudinalForceCurve(into.along, t, Fz, into.pressure, into.inclination);
  fillSideForceCurve(into.side, t, Fz, into.pressure, into.inclination);
  fillCombined(into, t, loadIncrement(t, Fz), Math.sin(-into.inclination));
  into.momentWaits = t;
}

/** Eqs 4.E50–4.E67 as far as they do not depend on slip; g is γ*, ISO 8855. */
function fillCombined(w: PreparedWheel, t: MagicFormula61Coefficients, df: number, g: number) {
  const { pull } = w;
  fillAlongHill(w.alongLeft, t, df, g);
  fillSideHill(w.sideLeft, t, df, g);
  pull.most = w.side.peak * (t.RVY1 + t.RVY2 * df + t.RVY3 * g); // – eq. 4.E67
  pull.falling = t.RVY4;
  pull.shape = t.RVY5;
  pull.steepness = t.RVY6;
}

/**
 * Push of a wheel, N, forward positive: `combinedLongitudinalForce61` – Pacejka 2012, eqs 4.E50–4.E57.
 *
 * @param slip - wheel speed above road speed as a share of road speed; below zero when braking
 * @param tanAlpha - tangent of the slip angle, above zero makes a force to the left
 */
export function pushOf(w: PreparedWheel, slip: number, tanAlpha: number): number {
  if (w.load === 0) return 0;
  const along = clampTo(slipRange, slip);
  const left = leftOf(w.alongLeft, -clampTo(tanRange, tanAlpha), along);
  return left * magicFormula(w.along, along);
}

/** Side force of a wheel, N, left positive: `combinedSideForce61` – Pacejka 2012, eqs 4.E58–4.E67. */
export function sideOf(w: PreparedWheel, slip: number, tanAlpha: number): number {
  if (w.load === 0) return 0;
  const along = clampTo(slipRange, slip);
  const across = clampTo(tanRange, tanAlpha);
  const force = leftOf(w.sideLeft, along, -across) * magicFormula(w.side, across);
  return w.pull.most === 0 ? force : force + pulled(w.pull, along, across);
}

/** SVyκ, N – eq. 4.E66. */
function pulled(
  { most, falling, shape, steepness }: PreparedWheel["pull"],
  slip: number,
  tan: number,
) {
  const reach = falling * tan;
  return (most / Math.sqrt(1 + reach * reach)) * Math.sin(shape * Math.atan(steepness * slip));
}

/**
 * Moment of a wheel about the vertical, N·m, above zero turning the nose to the left:
 * `aligningMoment61` – Pacejka 2012, eqs 4.E31–4.E49 and 4.E71–4.E78.
 */
export function momentOf(w: PreparedWheel, slip: number, tanAlpha: number): number {
  return momentWith(w, slip, tanAlpha, pushOf(w, slip, tanAlpha), sideOf(w, slip, tanAlpha));
}

/** The same where the push and side force (N) of that slip are at hand. */
export function momentWith(
  w: PreparedWheel,
  slip: number,
  tanAlpha: number,
  push: number,
  side: number,
): number {
  if (w.load === 0) return 0;
  if (w.momentWaits !== undefined) {
    fillMoment(w.moment, w.momentWaits, w.load, w.pressure, w.inclination, w.along, w.side);
    w.momentWaits = undefined;
  }
  return momentAt(w.moment, clampTo(slipRange, slip), clampTo(tanRange, tanAlpha), push, side);
}

/**
 * Slip at which a wheel that rolls straight pushes most forward, above zero, at most 1.
 *
 * Also for a wheel in the air: that of its first touch.
 */
export function mostSlip(w: PreparedWheel): number {
  const { along, top } = w;
  if (top.shape !== along.shape) {
    top.shape = along.shape;
    top.target = Math.tan(Math.PI / (2 * along.shape));
    top.reach = top.target; // that of E = 0
    top.curvature = 0;
  }
  if (top.curvature !== along.curvature) {
    top.curvature = along.curvature;
    top.reach = reachOfTop(along.curvature, top.target, top.reach);
  }
  return Math.min(slipRange.maximum, top.reach / along.stiffnessFactor - along.horizontalShift);
}

/**
 * The B·slip = b of the top of a curve: b − E(b − atan b) = tan(π/2C) – Pacejka 2012, ch. 4.
 *
 * Newton's steps come from one side, since the left side bends one way: the root lies beyond
 * tan(π/2C) for E above zero, short of it for E below.
 */
function reachOfTop(e: number, target: number, start: number): number {
  let b = start;
  for (let i = 0; i < MOST_STEPS; i++) {
    const miss = b - e * (b - Math.atan(b)) - target;
    const step = miss / (1 - e + e / (1 + b * b));
    b = e > 0 ? Math.min(FARTHEST, Math.max(target, b - step)) : Math.min(target, b - step);
    if (Math.abs(step) < 1e-7 * b) break; // what is left is of the order of its square
  }
  return b;
}

const MOST_STEPS = 50;
const FARTHEST = 1e3; // a tyre whose curve never turns: far beyond slip 1

/** Greatest push forward of a wheel that rolls straight, N; 0 in the air. */
export function mostPushOf(w: PreparedWheel): number {
  return pushOf(w, mostSlip(w), 0);
}

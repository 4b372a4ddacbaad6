import { flatCurve, type MagicFormulaCurve, magicFormula } from "./magic-formula.js";
import type { MagicFormula61Coefficients } from "./magic-formula-61-coefficients.js";
import { combinedForce61 } from "./magic-formula-61-combined.js";
import { longitudinalForceCurve } from "./magic-formula-61-longitudinal.js";
import {
  fillSideForceCurve,
  loadIncrement,
  pressureIncrement,
  sideForceCurve,
} from "./magic-formula-61-side.js";
import { fillSideHill, flatHill, leftOf } from "./slip-hill.js";

/** What does not depend on slip in the moment of one tyre about the vertical; fillable. */
export interface MomentCurve {
  /** Side force of the same tyre upright, and what slip along leaves of it – eq. 4.E74. */
  readonly upright: ReturnType<typeof flatCurve>;
  readonly uprightLeft: ReturnType<typeof flatHill>;
  /** How far behind the middle of the patch that force acts: Bt, Ct, Dt (m), Et, SHt. */
  readonly trail: {
    stiffness: number;
    shape: number;
    most: number;
    curvature: number;
    lopsided: number;
    shift: number;
  };
  /** What is left where that force is zero: Br, Dr (N·m), SHf. */
  readonly residual: { stiffness: number; most: number; shift: number };
  /** Where the push acts, m to the right of the middle, and how a side force moves it, m/N. */
  readonly arm: { still: number; perNewton: number };
  /** Kxκ/Kyα: how much a slip along counts beside one across. */
  slipRatio: number;
}

/** A moment curve to be filled. */
export function flatMoment(): MomentCurve {
  return {
    upright: flatCurve(),
    uprightLeft: flatHill(),
    trail: { stiffness: 0, shape: 1, most: 0, curvature: 0, lopsided: 0, shift: 0 },
    residual: { stiffness: 0, most: 0, shift: 0 },
    arm: { still: 0, perNewton: 0 },
    slipRatio: 0,
  };
}

/**
 * Works out a moment curve at a load above zero, from the force curves of the same state.
 *
 * @see Pacejka 2012, eqs 4.E35, 4.E38–4.E47, 4.E76, without turn slip, scaling factors 1
 */
export function fillMoment(
  into: MomentCurve,
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination: number,
  along: MagicFormulaCurve,
  side: MagicFormulaCurve,
): void {
  const g = Math.sin(-inclination); // γ*, ISO 8855
  const df = loadIncrement(t, load);
  const stiffness = side.stiffnessFactor * side.shape * side.peak; // −Kyα
  fillSideForceCurve(into.upright, t, load, pressure, 0);
  fillSideHill(into.uprightLeft, t, df, 0);
  fillTrail(into, t, load, df, pressureIncrement(t, pressure), g);
  const { residual, arm } = into;
  residual.shift = -side.horizontalShift - side.verticalShift / stiffness; // – eq. 4.E38
  residual.stiffness = t.QBZ9 - t.QBZ10 * side.stiffnessFactor * side.shape; // – eq. 4.E46
  residual.most = residualMost(t, load, df, pressureIncrement(t, pressure), g);
  arm.still = t.UNLOADED_RADIUS * (t.SSZ1 + (t.SSZ3 + t.SSZ4 * df) * g); // – eq. 4.E76
  arm.perNewton = (t.UNLOADED_RADIUS * t.SSZ2) / t.FNOMIN;
  into.slipRatio = (along.stiffnessFactor * along.shape * along.peak) / stiffness;
}

function fillTrail(
  { trail }: MomentCurve,
  t: MagicFormula61Coefficients,
  load: number,
  df: number,
  dp: number,
  g: number,
): void {
  const lean = Math.abs(g);
  const upright = load * (t.UNLOADED_RADIUS / t.FNOMIN) * (t.QDZ1 + t.QDZ2 * df); // – eq. 4.E42
  trail.most = upright * (1 - t.PPZ1 * dp) * (1 + t.QDZ3 * lean + t.QDZ4 * g * g); // – eq. 4.E43
  trail.stiffness = (t.QBZ1 + t.QBZ2 * df + t.QBZ3 * df * df) * (1 + t.QBZ4 * g + t.QBZ5 * lean); // – eq. 4.E40
  trail.shape = t.QCZ1; // – eq. 4.E41
  trail.curvature = t.QEZ1 + t.QEZ2 * df + t.QEZ3 * df * df; // – eq. 4.E44
  trail.lopsided = t.QEZ4 + t.QEZ5 * g;
  trail.shift = t.QHZ1 + t.QHZ2 * df + (t.QHZ3 + t.QHZ4 * df) * g; // – eq. 4.E35
}

/** Dr without cos α, N·m – eq. 4.E47. */
function residualMost(
  t: MagicFormula61Coefficients,
  load: number,
  df: number,
  dp: number,
  g: number,
): number {
  const byLean = (t.QDZ8 + t.QDZ9 * df) * (1 + t.PPZ2 * dp);
  const byLeanSquared = (t.QDZ10 + t.QDZ11 * df) * Math.abs(g);
  return load * t.UNLOADED_RADIUS * (t.QDZ6 + t.QDZ7 * df + (byLean + byLeanSquared) * g);
}

/**
 * Moment at a slip, N·m, from the forces (N) that the same slip makes – eqs 4.E71–4.E78.
 *
 * @param tanAlpha - tangent of the slip angle, above zero makes a force to the left
 */
export function momentAt(
  m: MomentCurve,
  slip: number,
  tanAlpha: number,
  push: number,
  side: number,
): number {
  const a = -tanAlpha; // α*, ISO 8855
  const cosine = 1 / Math.sqrt(1 + a * a);
  const q = m.slipRatio * slip;
  const ar = m.residual.stiffness ** 2 * ((a + m.residual.shift) ** 2 + q * q); // – eq. 4.E78
  const residual = m.residual.most / Math.sqrt(1 + ar); // – eq. 4.E75, Cr = 1
  const upright = leftOf(m.uprightLeft, slip, a) * magicFormula(m.upright, tanAlpha); // – eq. 4.E74
  const arm = m.arm.still + m.arm.perNewton * side;
  return (residual - trailAt(m.trail, a, q) * upright) * cosine + arm * push;
}

/** The trail without cos α, m – eqs 4.E73 and 4.E77; a slip angle of zero counts as above it. */
function trailAt(trail: MomentCurve["trail"], a: number, q: number): number {
  const own = a + trail.shift;
  const size = Math.sqrt(own * own + q * q);
  const x = own < 0 ? -size : size;
  const bx = trail.stiffness * x;
  const E = Math.min(1, trail.curvature * (1 + lopsided(trail, x)));
  return trail.most * Math.cos(trail.shape * Math.atan(bx - E * (bx - Math.atan(bx))));
}

/** – eq. 4.E44 */
function lopsided(trail: MomentCurve["trail"], x: number): number {
  if (trail.lopsided === 0) return 0;
  return trail.lopsided * (2 / Math.PI) * Math.atan(trail.stiffness * trail.shape * x);
}

/**
 * Moment of a tyre about the vertical through the middle of its patch, N·m, at a load above zero.
 *
 * Above zero turns the nose to the left (ISO 8855, z up): a force to the left that acts behind the
 * middle turns it to the right, back towards the way the tyre travels.
 *
 * @param slip - wheel speed above road speed as a share of road speed; negative when braking
 * @param slipAngle - rad, positive makes a force to the left
 * @param inclination - rad, positive leans to the left
 * @see Pacejka 2012, eqs 4.E31–4.E49 and 4.E71–4.E78, without turn slip
 */
export function aligningMoment61(
  t: MagicFormula61Coefficients,
  slip: number,
  slipAngle: number,
  load: number,
  pressure: number,
  inclination: number,
): number {
  const curve = flatMoment();
  const along = longitudinalForceCurve(t, load, pressure, inclination);
  const side = sideForceCurve(t, load, pressure, inclination);
  fillMoment(curve, t, load, pressure, inclination, along, side);
  const force = combinedForce61(t, slip, slipAngle, load, pressure, inclination);
  return momentAt(curve, slip, Math.tan(slipAngle), force.longitudinal, force.side);
}

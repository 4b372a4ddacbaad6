import {
  type FillableCurve,
  flatCurve,
  type MagicFormulaCurve,
  magicFormula,
  peakSlip,
} from "./magic-formula.js";
import type { MagicFormula61Coefficients } from "./magic-formula-61-coefficients.js";

/** Load above nominal as a share of nominal – Pacejka 2012, eq. 4.E2a. */
export function loadIncrement(tyre: MagicFormula61Coefficients, load: number): number {
  return (load - tyre.FNOMIN) / tyre.FNOMIN;
}

/** Pressure above nominal as a share of nominal – Pacejka 2012, eq. 4.E2b. */
export function pressureIncrement(tyre: MagicFormula61Coefficients, pressure: number): number {
  return (pressure - tyre.NOMPRES) / tyre.NOMPRES;
}

/** Friction coefficient to the side, without unit – Pacejka 2012, eq. 4.E23. */
export function sideFriction(
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination: number,
): number {
  const df = loadIncrement(t, load);
  return frictionAt(t, df, pressureIncrement(t, pressure), Math.sin(inclination));
}

/** Cornering stiffness, N/rad, positive – Pacejka 2012, eq. 4.E25. */
export function corneringStiffness61(
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination: number,
): number {
  return stiffnessAt(t, load, pressureIncrement(t, pressure), Math.sin(inclination));
}

function frictionAt(t: MagicFormula61Coefficients, df: number, dp: number, g: number): number {
  const atPressure = 1 + t.PPY3 * dp + t.PPY4 * dp * dp;
  return (t.PDY1 + t.PDY2 * df) * atPressure * (1 - t.PDY3 * g * g);
}

function stiffnessAt(t: MagicFormula61Coefficients, load: number, dp: number, g: number): number {
  const bend = (t.PKY2 + t.PKY5 * g * g) * (1 + t.PPY2 * dp);
  const atLoad = sinOfAtan(t.PKY4, load / t.FNOMIN / bend);
  return -t.PKY1 * t.FNOMIN * (1 + t.PPY1 * dp) * (1 - t.PKY3 * Math.abs(g)) * atLoad;
}

/** sin(n·atan x); for n = 2, the usual one, without either: 2x/(1 + x²). */
function sinOfAtan(n: number, x: number): number {
  return n === 2 ? (2 * x) / (1 + x * x) : Math.sin(n * Math.atan(x));
}

/**
 * The curve of side force against the tangent of the slip angle, at a load above zero.
 *
 * The book counts slip angle and inclination the other way (ISO 8855); here both make a positive
 * force when positive, so the shifts of slip change sign.
 */
export function sideForceCurve(
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination: number,
): MagicFormulaCurve {
  const curve = flatCurve();
  fillSideForceCurve(curve, t, load, pressure, inclination);
  return curve;
}

/** The same, written into a curve that is there. */
export function fillSideForceCurve(
  into: FillableCurve,
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination: number,
): void {
  const g = Math.sin(-inclination); // γ*, ISO 8855
  const df = loadIncrement(t, load);
  const dp = pressureIncrement(t, pressure);
  const Dy = frictionAt(t, df, dp, g) * load; // – eq. 4.E22
  const Ky = stiffnessAt(t, load, dp, g);
  const Kyg = load * (t.PKY6 + t.PKY7 * df) * (1 + t.PPY5 * dp); // – eq. 4.E30
  const SVyg = load * (t.PVY3 + t.PVY4 * df) * g; // – eq. 4.E28
  const SHy = t.PHY1 + t.PHY2 * df - (Kyg * g - SVyg) / Ky; // – eq. 4.E27, with Kyα = −Ky
  const bend = t.PEY1 + t.PEY2 * df;
  const Ey = bend * (1 + t.PEY5 * g * g); // – eq. 4.E24
  const lopsided = bend * (t.PEY3 + t.PEY4 * g);
  into.stiffnessFactor = Ky / (t.PCY1 * Dy); // – eq. 4.E26
  into.shape = t.PCY1; // – eq. 4.E21
  into.peak = Dy;
  into.curvature = Math.min(1, Ey + lopsided);
  into.curvatureBelow = Math.min(1, Ey - lopsided);
  into.horizontalShift = -SHy;
  into.verticalShift = load * (t.PVY1 + t.PVY2 * df) + SVyg; // – eq. 4.E29
}

/** Side force, N, at a slip angle in rad – Pacejka 2012, eqs 4.E19 and 4.E20. */
export function sideForce61(
  t: MagicFormula61Coefficients,
  slipAngle: number,
  load: number,
  pressure: number,
  inclination: number,
): number {
  return magicFormula(sideForceCurve(t, load, pressure, inclination), Math.tan(slipAngle));
}

/** Slip angle, rad, of the greatest side force to the left. */
export function peakSlipAngle61(
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination: number,
): number {
  return Math.atan(peakSlip(sideForceCurve(t, load, pressure, inclination)));
}

/** Greatest side force to the left, N: the sine is 1 there, so it is D + SV. */
export function peakSideForce61(
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination: number,
): number {
  const curve = sideForceCurve(t, load, pressure, inclination);
  return curve.peak + curve.verticalShift;
}

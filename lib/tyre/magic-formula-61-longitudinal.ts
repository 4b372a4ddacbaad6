import {
  type FillableCurve,
  flatCurve,
  type MagicFormulaCurve,
  magicFormula,
} from "./magic-formula.js";
import type { MagicFormula61Coefficients } from "./magic-formula-61-coefficients.js";
import { loadIncrement, pressureIncrement } from "./magic-formula-61-side.js";

/** Friction coefficient along the tyre, without unit – Pacejka 2012, eq. 4.E13. */
export function longitudinalFriction(
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination: number,
): number {
  const dp = pressureIncrement(t, pressure);
  const atLoad = t.PDX1 + t.PDX2 * loadIncrement(t, load);
  const atPressure = 1 + t.PPX3 * dp + t.PPX4 * dp * dp;
  if (t.PDX3 === 0) return atLoad * atPressure;
  return atLoad * atPressure * (1 - t.PDX3 * Math.sin(inclination) ** 2);
}

/** Whether lean costs braking and traction; where not, the tyre's data say nothing of it. */
export function leanCostsPush(t: MagicFormula61Coefficients): boolean {
  return t.PDX3 !== 0;
}

/** Rise of longitudinal force with slip, N – Pacejka 2012, eq. 4.E15. */
export function longitudinalSlipStiffness(
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
): number {
  const df = loadIncrement(t, load);
  const dp = pressureIncrement(t, pressure);
  const atLoad = (t.PKX1 + t.PKX2 * df) * Math.exp(t.PKX3 * df);
  return load * atLoad * (1 + t.PPX1 * dp + t.PPX2 * dp * dp);
}

/** The curve of longitudinal force against slip, at a load above zero. */
export function longitudinalForceCurve(
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination: number,
): MagicFormulaCurve {
  const curve = flatCurve();
  fillLongitudinalForceCurve(curve, t, load, pressure, inclination);
  return curve;
}

/** The same, written into a curve that is there. */
export function fillLongitudinalForceCurve(
  into: FillableCurve,
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination: number,
): void {
  const df = loadIncrement(t, load);
  const Dx = longitudinalFriction(t, load, pressure, inclination) * load; // – eq. 4.E12
  const Ex = t.PEX1 + t.PEX2 * df + t.PEX3 * df * df; // – eq. 4.E14
  into.stiffnessFactor = longitudinalSlipStiffness(t, load, pressure) / (t.PCX1 * Dx); // – eq. 4.E16
  into.shape = t.PCX1; // – eq. 4.E11
  into.peak = Dx;
  into.curvature = Math.min(1, Ex * (1 - t.PEX4));
  into.curvatureBelow = Math.min(1, Ex * (1 + t.PEX4));
  into.horizontalShift = t.PHX1 + t.PHX2 * df; // – eq. 4.E17
  into.verticalShift = load * (t.PVX1 + t.PVX2 * df); // – eq. 4.E18
}

/**
 * Longitudinal force, N, forward positive – Pacejka 2012, eq. 4.E9.
 *
 * @param slip - wheel speed above road speed as a share of road speed; negative when braking
 */
export function longitudinalForce61(
  t: MagicFormula61Coefficients,
  slip: number,
  load: number,
  pressure: number,
  inclination: number,
): number {
  return magicFormula(longitudinalForceCurve(t, load, pressure, inclination), slip);
}

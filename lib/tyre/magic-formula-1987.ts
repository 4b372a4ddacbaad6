import { type MagicFormulaCurve, magicFormula, peakSlip } from "./magic-formula.js";
import type { Tyre } from "./tyre.js";
import { clampTo, isLoaded } from "./valid-range.js";

// Coefficients of the side force, loads in kN and angles in degrees
// – Bakker, Nyborg, Pacejka, SAE 870421 (1987); Bakker, Pacejka, Lidner, SAE 890087 (1989)
const a0 = 1.3;
const a1 = -22.1;
const a2 = 1011;
const a3 = 1078;
const a4 = 1.82;
const a5 = 0.208;
const a6 = 0;
const a7 = -0.354;
// biome-ignore lint/suspicious/noApproximativeNumericConstant: a published coefficient, not a root
const a8 = 0.707;

const STIFFNESS = 200e3; // N/m, vertical; from memory: a middling road tyre
const kilo = 1000;
const degree = Math.PI / 180;
const load = { minimum: 0, maximum: 10e3 };
const slipAngle = { minimum: -30 * degree, maximum: 30 * degree };

/** Peak side force, N, D = a1·Fz² + a2·Fz – SAE 870421; load in N, clamped to 0–10 kN. */
function peak(newtons: number): number {
  const Fz = clampTo(load, newtons) / kilo;
  return a1 * Fz ** 2 + a2 * Fz;
}

/** Cornering stiffness, N/rad, BCD = a3 sin(a4 atan(a5·Fz)) – SAE 870421; load in N. */
function corneringStiffness(newtons: number): number {
  const Fz = clampTo(load, newtons) / kilo;
  return (a3 * Math.sin(a4 * Math.atan(a5 * Fz))) / degree;
}

/** The curve of side force, N, against slip angle, rad, at a load above zero, N. */
function curveAt(newtons: number): MagicFormulaCurve {
  const Fz = clampTo(load, newtons) / kilo;
  const D = peak(newtons);
  const E = a6 * Fz ** 2 + a7 * Fz + a8; // – SAE 890087
  return {
    stiffnessFactor: corneringStiffness(newtons) / (a0 * D),
    shape: a0,
    peak: D,
    curvature: E,
    curvatureBelow: E,
    horizontalShift: 0,
    verticalShift: 0,
  };
}

/**
 * The first published Magic Formula for side force, with its coefficients, in SI.
 *
 * Upright, one pressure. Valid for loads of 0–10 kN (the published curves show 2–8 kN); other loads
 * and slip angles beyond 30° are clamped. It says nothing of vertical stiffness.
 */
export const magicFormula1987: Tyre = {
  name: "published tyre of 1987",
  nominalPressure: 200e3,
  valid: {
    load,
    pressure: { minimum: 0, maximum: Infinity },
    inclination: { minimum: -Infinity, maximum: Infinity },
  },
  sideForce: (state) =>
    isLoaded(state.load)
      ? magicFormula(curveAt(state.load), clampTo(slipAngle, state.slipAngle))
      : 0,
  peakSideForce: (state) => peak(state.load),
  peakSlipAngle: (state) => (isLoaded(state.load) ? peakSlip(curveAt(state.load)) : 0),
  corneringStiffness: (state) => corneringStiffness(state.load),
  verticalStiffness: () => STIFFNESS,
  deflection: (state) => Math.max(0, state.load) / STIFFNESS,
  loadAt: (deflection) => Math.max(0, deflection) * STIFFNESS,
};

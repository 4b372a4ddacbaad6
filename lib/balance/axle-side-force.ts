import { magicFormulaWithSlope } from "../tyre/magic-formula.js";
import type { MagicFormula61Coefficients } from "../tyre/magic-formula-61-coefficients.js";
import { sideForceCurve } from "../tyre/magic-formula-61-side.js";
import type { AxleInTurn, TyreInTurn } from "./axle-in-turn.js";

/** Side force of an axle, and how it changes with slip angle. */
export interface SideForceAndSlope {
  /** N, to the left */
  readonly force: number;
  /** N/rad */
  readonly slope: number;
}

const unloaded: SideForceAndSlope = { force: 0, slope: 0 };

/**
 * Side force of both tyres at one slip angle of the axle and one lateral acceleration.
 *
 * @param slipAngle - rad, above 0 for a force to the left; toe is added for each tyre
 * @param ay - lateral acceleration, m/s², which fixes loads, lean and toe
 */
export function axleSideForce(axle: AxleInTurn, slipAngle: number, ay: number): SideForceAndSlope {
  const inner = tyreSideForce(axle.tyre, axle.inner, slipAngle, ay);
  const outer = tyreSideForce(axle.tyre, axle.outer, slipAngle, ay);
  return { force: inner.force + outer.force, slope: inner.slope + outer.slope };
}

function tyreSideForce(
  coefficients: MagicFormula61Coefficients,
  tyre: TyreInTurn,
  slipAngle: number,
  ay: number,
): SideForceAndSlope {
  const { load, inclination } = coefficients.valid;
  const fz = Math.min(load.maximum, tyre.load.offset + tyre.load.slope * ay);
  if (fz <= 1e-3) return unloaded;
  const lean = tyre.inclination.offset + tyre.inclination.slope * ay;
  const within = Math.min(inclination.maximum, Math.max(inclination.minimum, lean));
  const curve = sideForceCurve(coefficients, fz, tyre.pressure, within);
  const tan = Math.tan(slipAngle + tyre.toe.offset + tyre.toe.slope * ay);
  const { force, slope } = magicFormulaWithSlope(curve, tan);
  return { force, slope: slope * (1 + tan * tan) }; // d(tan α)/dα = 1 + tan²α
}

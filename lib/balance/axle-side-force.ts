import { magicFormulaWithSlope } from "../tyre/magic-formula.js";
import type { MagicFormula61Coefficients } from "../tyre/magic-formula-61-coefficients.js";
import { longitudinalFriction } from "../tyre/magic-formula-61-longitudinal.js";
import { sideForceCurve } from "../tyre/magic-formula-61-side.js";
import type { AxleInTurn, TyreInTurn } from "./axle-in-turn.js";
import { sharePush } from "./share-push.js";

/** Side force of an axle, and how it changes with slip angle. */
export interface SideForceAndSlope {
  /** N, to the left */
  readonly force: number;
  /** N/rad */
  readonly slope: number;
}

/**
 * Side force of both tyres at one slip angle of the axle and one lateral acceleration.
 *
 * Tyres that also push or brake keep √(1 − (Fx/Fx most)²) of it: the friction ellipse
 * – Milliken 1995, ch. 2.
 *
 * @param slipAngle - rad, above 0 for a force to the left; toe is added for each tyre
 * @param ay - lateral acceleration, m/s², which fixes loads, lean and toe
 */
export function axleSideForce(axle: AxleInTurn, slipAngle: number, ay: number): SideForceAndSlope {
  const inner = tyreSideForce(axle.tyre, axle.inner, slipAngle, ay);
  const outer = tyreSideForce(axle.tyre, axle.outer, slipAngle, ay);
  if (axle.push === 0)
    return { force: inner.force + outer.force, slope: inner.slope + outer.slope };
  const most = {
    left: mostPushOf(axle.tyre, axle.inner, ay),
    right: mostPushOf(axle.tyre, axle.outer, ay),
  };
  const push = sharePush(axle.push, most);
  const [a, b] = [leftOver(push.left, most.left), leftOver(push.right, most.right)];
  return { force: a * inner.force + b * outer.force, slope: a * inner.slope + b * outer.slope };
}

const unloaded: SideForceAndSlope = { force: 0, slope: 0 };

function loadAt(t: MagicFormula61Coefficients, { load }: TyreInTurn, ay: number): number {
  return Math.min(t.valid.load.maximum, load.offset + load.slope * ay);
}

function leanAt({ valid }: MagicFormula61Coefficients, { inclination }: TyreInTurn, ay: number) {
  const lean = inclination.offset + inclination.slope * ay;
  return Math.min(valid.inclination.maximum, Math.max(valid.inclination.minimum, lean));
}

function tyreSideForce(
  t: MagicFormula61Coefficients,
  tyre: TyreInTurn,
  slipAngle: number,
  ay: number,
): SideForceAndSlope {
  const load = loadAt(t, tyre, ay);
  if (load <= 1e-3) return unloaded;
  const curve = sideForceCurve(t, load, tyre.pressure, leanAt(t, tyre, ay));
  const tan = Math.tan(slipAngle + tyre.toe.offset + tyre.toe.slope * ay);
  const { force, slope } = magicFormulaWithSlope(curve, tan);
  return { force, slope: slope * (1 + tan * tan) }; // d(tan α)/dα = 1 + tan²α
}

/** The most a tyre could push straight ahead, N. */
function mostPushOf(t: MagicFormula61Coefficients, tyre: TyreInTurn, ay: number): number {
  const load = Math.max(0, loadAt(t, tyre, ay));
  return load * longitudinalFriction(t, load, tyre.pressure, leanAt(t, tyre, ay));
}

/** Share of side force that a push leaves: on an ellipse with the most of each for its axes. */
function leftOver(push: number, most: number): number {
  const used = most > 0 ? push / most : 0;
  return Math.sqrt(Math.max(0, 1 - used * used));
}

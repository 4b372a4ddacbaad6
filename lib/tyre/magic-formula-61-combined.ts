import type { MagicFormula61Coefficients } from "./magic-formula-61-coefficients.js";
import { longitudinalForce61 } from "./magic-formula-61-longitudinal.js";
import { loadIncrement, sideForce61, sideFriction } from "./magic-formula-61-side.js";

/** Two forces of one tyre in the road plane, N. */
export interface PlaneForce {
  /** Forward. */
  readonly longitudinal: number;
  /** To the left. */
  readonly side: number;
}

/**
 * Both forces of a tyre that slips along and across at once, at a load above zero.
 *
 * @param slip - wheel speed above road speed as a share of road speed; negative when braking
 * @param slipAngle - rad, positive makes a force to the left
 * @see Pacejka 2012, eqs 4.E50–4.E67
 */
export function combinedForce61(
  t: MagicFormula61Coefficients,
  slip: number,
  slipAngle: number,
  load: number,
  pressure: number,
  inclination: number,
): PlaneForce {
  return {
    longitudinal: combinedLongitudinalForce61(t, slip, slipAngle, load, pressure, inclination),
    side: combinedSideForce61(t, slip, slipAngle, load, pressure, inclination),
  };
}

/** The longitudinal one of both forces, N – Pacejka 2012, eqs 4.E50–4.E57. */
function combinedLongitudinalForce61(
  t: MagicFormula61Coefficients,
  slip: number,
  slipAngle: number,
  load: number,
  pressure: number,
  inclination: number,
): number {
  const g = Math.sin(inclination);
  const a = Math.tan(-slipAngle); // α*, ISO 8855
  const B = (t.RBX1 + t.RBX3 * g * g) * cosOfAtan(t.RBX2 * slip); // – eq. 4.E54
  const E = Math.min(1, t.REX1 + t.REX2 * loadIncrement(t, load)); // – eq. 4.E56
  const left = hill(B, a, t.RHX1, t.RCX1, E); // – eq. 4.E51
  return left * longitudinalForce61(t, slip, load, pressure, inclination);
}

/** The side one of both forces, N – Pacejka 2012, eqs 4.E58–4.E67. */
function combinedSideForce61(
  t: MagicFormula61Coefficients,
  slip: number,
  slipAngle: number,
  load: number,
  pressure: number,
  inclination: number,
): number {
  const g = Math.sin(-inclination); // γ*, ISO 8855
  const a = Math.tan(-slipAngle); // α*, ISO 8855
  const df = loadIncrement(t, load);
  const B = (t.RBY1 + t.RBY4 * g * g) * cosOfAtan(t.RBY2 * (a - t.RBY3)); // – eq. 4.E62
  const E = Math.min(1, t.REY1 + t.REY2 * df); // – eq. 4.E64
  const left = hill(B, slip, t.RHY1 + t.RHY2 * df, t.RCY1, E); // – eqs 4.E59, 4.E65
  const pull = t.RVY1 + t.RVY2 * df + t.RVY3 * g; // share of the friction force – eq. 4.E67
  const across = left * sideForce61(t, slipAngle, load, pressure, inclination);
  if (pull === 0) return across;
  const D = sideFriction(t, load, pressure, inclination) * load * pull * cosOfAtan(t.RVY4 * a);
  return across + D * Math.sin(t.RVY5 * Math.atan(t.RVY6 * slip)); // – eq. 4.E66
}

/** What share of a force slip in the other direction leaves, 1 at zero slip – eqs 4.E51, 4.E59. */
function hill(b: number, slip: number, shift: number, c: number, e: number): number {
  const top = shift === 0 ? 1 : height(b * shift, c, e);
  return Math.max(0, height(b * (slip + shift), c, e) / top);
}

function height(bx: number, c: number, e: number): number {
  return Math.cos(c * Math.atan(bx - e * (bx - Math.atan(bx))));
}

/** cos(atan x). */
function cosOfAtan(x: number): number {
  return 1 / Math.sqrt(1 + x * x);
}

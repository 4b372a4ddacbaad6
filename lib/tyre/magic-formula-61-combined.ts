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

/** A hill of height 1 at zero shifted slip: cos(C atan(Bx − E(Bx − atan Bx))) – eq. 4.E51. */
function hill(bx: number, c: number, e: number): number {
  return Math.cos(c * Math.atan(bx - e * (bx - Math.atan(bx))));
}

/** What share of the longitudinal force a slip angle leaves, 0 to about 1 – eqs 4.E50–4.E57. */
function longitudinalShare(
  t: MagicFormula61Coefficients,
  slip: number,
  tanSlipAngle: number,
  load: number,
  g: number,
): number {
  const B = (t.RBX1 + t.RBX3 * g * g) * Math.cos(Math.atan(t.RBX2 * slip)); // – eq. 4.E54
  const E = Math.min(1, t.REX1 + t.REX2 * loadIncrement(t, load)); // – eq. 4.E56
  const shifted = tanSlipAngle + t.RHX1; // – eq. 4.E53
  return Math.max(0, hill(B * shifted, t.RCX1, E) / hill(B * t.RHX1, t.RCX1, E));
}

/** What share of the side force drive or brake slip leaves, 0 to about 1 – eqs 4.E58–4.E65. */
function sideShare(
  t: MagicFormula61Coefficients,
  slip: number,
  tanSlipAngle: number,
  load: number,
  g: number,
): number {
  const df = loadIncrement(t, load);
  const B = (t.RBY1 + t.RBY4 * g * g) * Math.cos(Math.atan(t.RBY2 * (tanSlipAngle - t.RBY3))); // – eq. 4.E62
  const E = Math.min(1, t.REY1 + t.REY2 * df); // – eq. 4.E64
  const shift = t.RHY1 + t.RHY2 * df; // – eq. 4.E65
  return Math.max(0, hill(B * (slip + shift), t.RCY1, E) / hill(B * shift, t.RCY1, E));
}

/** Side force that drive or brake slip makes by itself, N – eqs 4.E66 and 4.E67. */
function sidePull(
  t: MagicFormula61Coefficients,
  slip: number,
  tanSlipAngle: number,
  load: number,
  pressure: number,
  g: number,
): number {
  const df = loadIncrement(t, load);
  const D =
    sideFriction(t, load, pressure, Math.asin(g)) *
    load *
    (t.RVY1 + t.RVY2 * df + t.RVY3 * g) *
    Math.cos(Math.atan(t.RVY4 * tanSlipAngle));
  return D * Math.sin(t.RVY5 * Math.atan(t.RVY6 * slip));
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
  const g = Math.sin(-inclination); // γ*, ISO 8855
  const a = Math.tan(-slipAngle); // α*, ISO 8855
  const alone = longitudinalForce61(t, slip, load, pressure, inclination);
  const across = sideForce61(t, slipAngle, load, pressure, inclination);
  return {
    longitudinal: alone * longitudinalShare(t, slip, a, load, g),
    side: across * sideShare(t, slip, a, load, g) + sidePull(t, slip, a, load, pressure, g),
  };
}

import type { MagicFormula61Coefficients } from "./magic-formula-61-coefficients.js";
import { pressureIncrement } from "./magic-formula-61-side.js";

/** Size of the contact patch, m, and its gross area, m² (grooves counted in). */
export interface ContactPatch {
  readonly halfLength: number;
  readonly halfWidth: number;
  readonly area: number;
}

/** Vertical stiffness at a pressure in Pa, N/m – Pacejka 2012, eq. A3.5. */
export function verticalStiffness61(t: MagicFormula61Coefficients, pressure: number): number {
  return t.VERTICAL_STIFFNESS * (1 + t.PFZ1 * pressureIncrement(t, pressure));
}

/**
 * Contact patch at a load in N and a pressure in Pa, as a rectangle.
 *
 * @returns zeros for an unloaded tyre
 */
export function contactPatch61(
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
): ContactPatch {
  const R = t.UNLOADED_RADIUS;
  const deflection = Math.max(0, load) / verticalStiffness61(t, pressure) / R; // as share of R
  const halfLength = R * (t.Q_RA2 * deflection + t.Q_RA1 * Math.sqrt(deflection)); // – eq. A3.7
  const halfWidth = t.WIDTH * (t.Q_RB2 * deflection + t.Q_RB1 * Math.cbrt(deflection)); // – eq. A3.8
  return { halfLength, halfWidth, area: 4 * halfLength * halfWidth };
}

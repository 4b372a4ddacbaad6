import type { MagicFormula61Coefficients } from "./magic-formula-61-coefficients.js";
import { nominalVerticalStiffness } from "./vertical-force.js";

/** Size of the contact patch, m, and its gross area, m² (grooves counted in). */
export interface ContactPatch {
  readonly halfLength: number;
  readonly halfWidth: number;
  readonly area: number;
}

/**
 * Contact patch at a load in N and a pressure in Pa, as a rectangle.
 *
 * The book's coefficients belong to load over nominal stiffness, not to the deflection.
 *
 * @returns zeros for an unloaded tyre
 */
export function contactPatch61(
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
): ContactPatch {
  const R = t.UNLOADED_RADIUS;
  const squash = Math.max(0, load) / nominalVerticalStiffness(t, pressure) / R;
  const halfLength = R * (t.Q_RA2 * squash + t.Q_RA1 * Math.sqrt(squash)); // – eq. A3.7
  const halfWidth = t.WIDTH * (t.Q_RB2 * squash + t.Q_RB1 * Math.cbrt(squash)); // – eq. A3.8
  return { halfLength, halfWidth, area: 4 * halfLength * halfWidth };
}

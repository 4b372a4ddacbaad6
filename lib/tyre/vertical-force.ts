import type { MagicFormula61Coefficients } from "./magic-formula-61-coefficients.js";
import { pressureIncrement } from "./magic-formula-61-side.js";

// Fz = FNOMIN (1 + PFZ1 dp) (q ρ/R + Q_FZ2 (ρ/R)²) with q = Q_FZ1 + Q_FZ3 γ² – Pacejka 2012,
// eq. A3.3, of a tyre that stands or rolls slowly and freely: what speed (Q_V2) and force in the
// road plane (Q_FCX, Q_FCY) change is left out.

/** Stiffness at nominal load and nominal deflection under a pressure in Pa, N/m – eq. A3.5. */
export function nominalVerticalStiffness(t: MagicFormula61Coefficients, pressure: number): number {
  return t.VERTICAL_STIFFNESS * airFactor(t, pressure);
}

/** Load, N, of a tyre squashed by a deflection in m; 0 where it does not touch. */
export function verticalForce61(
  t: MagicFormula61Coefficients,
  deflection: number,
  pressure: number,
  inclination = 0,
): number {
  const x = Math.max(0, deflection) / t.UNLOADED_RADIUS;
  const shape = (linearTerm(t, inclination) + t.Q_FZ2 * x) * x;
  return t.FNOMIN * airFactor(t, pressure) * shape; // – eq. A3.3
}

/** How far a load in N squashes a tyre, m: eq. A3.3 turned round; 0 for no load. */
export function deflection61(
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination = 0,
): number {
  const share = Math.max(0, load) / (t.FNOMIN * airFactor(t, pressure));
  const q = linearTerm(t, inclination);
  return (2 * t.UNLOADED_RADIUS * share) / (q + Math.sqrt(q * q + 4 * t.Q_FZ2 * share));
}

/** Rise of load with deflection at a load in N, N/m; that of the first touch for no load. */
export function verticalStiffness61(
  t: MagicFormula61Coefficients,
  load: number,
  pressure: number,
  inclination = 0,
): number {
  const force = t.FNOMIN * airFactor(t, pressure);
  const q = linearTerm(t, inclination);
  const slope = Math.sqrt(q * q + 4 * t.Q_FZ2 * (Math.max(0, load) / force));
  return (force / t.UNLOADED_RADIUS) * slope;
}

function airFactor(t: MagicFormula61Coefficients, pressure: number): number {
  return 1 + t.PFZ1 * pressureIncrement(t, pressure);
}

/** Q_FZ1 from VERTICAL_STIFFNESS = (FNOMIN/R) √(Q_FZ1² + 4 Q_FZ2) – eq. A3.4 – and lean. */
function linearTerm(t: MagicFormula61Coefficients, inclination: number): number {
  const nominal = (t.VERTICAL_STIFFNESS * t.UNLOADED_RADIUS) / t.FNOMIN;
  const upright = Math.sqrt(nominal * nominal - 4 * t.Q_FZ2);
  return t.Q_FZ3 === 0 ? upright : upright + t.Q_FZ3 * Math.sin(inclination) ** 2;
}

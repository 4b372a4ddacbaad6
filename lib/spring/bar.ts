import { requireInRange } from "../check.js";
import { SHEAR_MODULUS_OF_STEEL } from "./coil.js";

/** A U-shaped bar: one straight part in torsion, two equal arms in bending. */
export interface BarGeometry {
  /** Outer diameter, m. */
  readonly diameter: number;
  /** Bore of a hollow bar, m; 0 when left out. */
  readonly innerDiameter?: number;
  /** Length of the straight part that twists, m. */
  readonly length: number;
  /** Length of each arm, square to the straight part, m. */
  readonly armLength: number;
  /** Pa; spring steel when left out. */
  readonly shearModulus?: number;
  /** Pa; 206 GPa when left out; Infinity for arms that do not bend (a stiff blade). */
  readonly elasticModulus?: number;
}

const ELASTIC_MODULUS_OF_STEEL = 206e9; // Pa, common practice

/**
 * Rate of an anti-roll bar, N/m: force at each end for each metre that the ends move apart.
 *
 * In roll one end goes up and the other down by the same amount, so the ends are twice that apart.
 * @throws Refusal when a number makes no bar
 */
export function antiRollBarRate(bar: BarGeometry): number {
  const d = requireInRange("bar diameter", bar.diameter, 1e-3, 0.2, "m");
  const bore = requireInRange("bore of the bar", bar.innerDiameter ?? 0, 0, 0.99 * d, "m");
  const l = requireInRange("length of the bar", bar.length, 0.01, 5, "m");
  const r = requireInRange("length of the bar arm", bar.armLength, 0.01, 2, "m");
  const G = requireInRange("shear modulus", bar.shearModulus ?? SHEAR_MODULUS_OF_STEEL, 1e8, 1e12);
  const E = bar.elasticModulus ?? ELASTIC_MODULUS_OF_STEEL;
  const J = (Math.PI / 32) * (d ** 4 - bore ** 4); // polar second moment of area
  const I = J / 2; // second moment of area in bending
  const twist = (r ** 2 * l) / (G * J); // ends apart by twist of the bar, m/N
  const bend = (2 * r ** 3) / (3 * E * I); // and by the two arms as cantilevers, m/N
  return 1 / (twist + bend);
}

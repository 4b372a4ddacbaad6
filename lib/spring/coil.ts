import { requireInRange } from "../check.js";

/** Shear modulus of spring steel, Pa – Shigley, Mechanical Engineering Design (79.3 GPa). */
export const SHEAR_MODULUS_OF_STEEL = 79.3e9;

/**
 * Rate of a helical spring from its wire, N/m.
 *
 * @param coil - wireDiameter and meanDiameter (m), activeCoils, shearModulus (Pa, steel if left out)
 * @throws Refusal when a number makes no spring
 */
export function coilSpringRate(coil: {
  wireDiameter: number;
  meanDiameter: number;
  activeCoils: number;
  shearModulus?: number;
}): number {
  const d = requireInRange("wire diameter", coil.wireDiameter, 1e-4, 0.1, "m");
  const D = requireInRange("mean coil diameter", coil.meanDiameter, 2 * d, 1, "m");
  const n = requireInRange("active coils", coil.activeCoils, 0.5, 100);
  const G = requireInRange("shear modulus", coil.shearModulus ?? SHEAR_MODULUS_OF_STEEL, 1e8, 1e12);
  return (G * d ** 4) / (8 * D ** 3 * n); // – Shigley, Mechanical Engineering Design, ch. 10
}

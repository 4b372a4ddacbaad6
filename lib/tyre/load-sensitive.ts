import { requireInRange } from "../check.js";
import type { Tyre } from "./tyre.js";
import { clampTo, isLoaded } from "./valid-range.js";

/** The five numbers of the simple tyre. */
export interface LoadSensitiveTyre {
  /** Friction coefficient as the load goes to zero, without unit. */
  readonly frictionAtNoLoad: number;
  /** How much the friction coefficient falls with load, 1/N; 0 for a tyre without load sensitivity. */
  readonly loadSensitivity: number;
  /** Slip angle of the peak, rad; the same at every load. */
  readonly peakSlipAngle: number;
  /** Vertical stiffness, N/m; the same at every load and pressure. */
  readonly verticalStiffness: number;
}

/** The invented tyre of the second chapter: 1.30 with no load, 0.05 less for each kN. */
export const simpleTyre: LoadSensitiveTyre = {
  frictionAtNoLoad: 1.3,
  loadSensitivity: 5e-5,
  peakSlipAngle: (8 * Math.PI) / 180,
  verticalStiffness: 215e3,
};

/**
 * Friction coefficient that falls in a straight line with load: μ = μ0 − s·Fz.
 *
 * @param load - N, from 0 up to where more load no longer adds force, μ0/(2s)
 * @returns friction coefficient, without unit
 * @example
 * const tyre = { frictionAtNoLoad: 1.2, loadSensitivity: 5e-5, peakSlipAngle: 0.1, verticalStiffness: 200e3 };
 * frictionAtLoad(tyre, 3000) // → 1.05, by hand: 1.2 − 5e-5·3000
 */
export function frictionAtLoad(tyre: LoadSensitiveTyre, load: number): number {
  const usable = clampTo({ minimum: 0, maximum: greatestUsefulLoad(tyre) }, load);
  return tyre.frictionAtNoLoad - tyre.loadSensitivity * usable;
}

/** Load at which more load no longer adds side force, N: where d(μ·Fz)/dFz = 0. */
export function greatestUsefulLoad(tyre: LoadSensitiveTyre): number {
  if (tyre.loadSensitivity === 0) return Infinity;
  return tyre.frictionAtNoLoad / (2 * tyre.loadSensitivity);
}

/**
 * Greatest side force of the simple tyre, N: load times friction at that load.
 *
 * @param load - N; an unloaded tyre gives 0, loads above the useful one give no more
 * @example
 * peakSideForceAtLoad(tyre, 3000) // → 3150, by hand: 3000·1.05
 */
export function peakSideForceAtLoad(tyre: LoadSensitiveTyre, load: number): number {
  const usable = clampTo({ minimum: 0, maximum: greatestUsefulLoad(tyre) }, load);
  return frictionAtLoad(tyre, usable) * usable;
}

/**
 * Side force two equal simple tyres lose to load transfer, N: 2·s·ΔF².
 *
 * (μ0−s(F+ΔF))(F+ΔF) + (μ0−s(F−ΔF))(F−ΔF) = 2(μ0−sF)F − 2sΔF².
 *
 * @param transfer - load moved from the inner to the outer tyre, N, at most the mean load
 * @example
 * sideForceLostToTransfer(tyre, 1000) // → 100, by hand: 2·5e-5·1000²
 */
export function sideForceLostToTransfer(tyre: LoadSensitiveTyre, transfer: number): number {
  return 2 * tyre.loadSensitivity * transfer ** 2;
}

/**
 * The simple tyre as a tyre like any other.
 *
 * @throws Refusal when a number of the tyre makes no sense
 */
export function loadSensitiveTyre(tyre: LoadSensitiveTyre, name = "simple tyre"): Tyre {
  requireInRange("friction at no load", tyre.frictionAtNoLoad, 0.01, 5);
  requireInRange("load sensitivity", tyre.loadSensitivity, 0, 1e-2, "1/N");
  requireInRange("peak slip angle", tyre.peakSlipAngle, 0.01, 1, "rad");
  requireInRange("vertical stiffness", tyre.verticalStiffness, 1e3, 1e7, "N/m");
  return {
    name,
    nominalPressure: 200e3,
    valid: {
      load: { minimum: 0, maximum: greatestUsefulLoad(tyre) },
      pressure: { minimum: 0, maximum: Infinity },
      inclination: { minimum: -Infinity, maximum: Infinity },
    },
    sideForce: ({ slipAngle, load }) =>
      peakSideForceAtLoad(tyre, load) * shareOfPeak(slipAngle / tyre.peakSlipAngle),
    peakSideForce: ({ load }) => peakSideForceAtLoad(tyre, load),
    peakSlipAngle: ({ load }) => (isLoaded(load) ? tyre.peakSlipAngle : 0),
    corneringStiffness: ({ load }) => (3 * peakSideForceAtLoad(tyre, load)) / tyre.peakSlipAngle,
    verticalStiffness: () => tyre.verticalStiffness,
    deflection: ({ load }) => Math.max(0, load) / tyre.verticalStiffness,
    loadAt: (deflection) => Math.max(0, deflection) * tyre.verticalStiffness,
  };
}

/** Brush model: 3x − 3x² + x³ until the whole patch slides at x = 1 – Pacejka 2012, ch. 3. */
function shareOfPeak(share: number): number {
  const x = Math.min(1, Math.abs(share));
  return Math.sign(share) * (3 * x - 3 * x ** 2 + x ** 3);
}

import { type ContactPatch, contactPatch61 } from "./contact-patch.js";
import type { MagicFormula61Coefficients } from "./magic-formula-61-coefficients.js";
import { withoutPull } from "./magic-formula-61-coefficients.js";
import { combinedForce61, type PlaneForce } from "./magic-formula-61-combined.js";
import { aligningMoment61 } from "./magic-formula-61-moment.js";
import {
  corneringStiffness61,
  peakSideForce61,
  peakSlipAngle61,
  sideForce61,
  sideFriction,
} from "./magic-formula-61-side.js";
import { referenceTyreCoefficients } from "./reference-tyre.js";
import type { Tyre, TyreSlipState, TyreState } from "./tyre.js";
import { clampTo, isLoaded } from "./valid-range.js";
import { deflection61, verticalForce61, verticalStiffness61 } from "./vertical-force.js";

/** A tyre that also drives and brakes, and whose patch is known. */
export interface FullTyre extends Tyre {
  /** Numbers of the tyre, for solvers that call the formulas themselves. */
  readonly coefficients: MagicFormula61Coefficients;
  /** Friction coefficient to the side of an upright or leaning tyre, without unit. */
  sideFriction(state: TyreState): number;
  /** Both forces at once; slip is wheel speed above road speed over road speed, −1 to 1. */
  combinedForce(state: TyreSlipState & { readonly slip: number }): PlaneForce;
  /** Moment about the vertical at the same slips, N·m, above zero turning the nose to the left. */
  aligningMoment(state: TyreSlipState & { readonly slip: number }): number;
  /** Length, width and gross area of the contact patch. */
  contactPatch(state: TyreState): ContactPatch;
}

/** Slip angles that the formula is for, rad; wider ones are clamped. */
export const slipAngleRange = { minimum: -0.96, maximum: 0.96 }; // rad – Pacejka 2012, Table A3.1
/** Slips that the formula is for; wider ones are clamped. */
export const slipRange = { minimum: -1, maximum: 1 };
const unloaded: PlaneForce = { longitudinal: 0, side: 0 };

/** Calls a formula with the nearest valid load, pressure and inclination; 0 for no load. */
function whenLoaded<T>(
  t: MagicFormula61Coefficients,
  state: TyreState,
  otherwise: T,
  formula: (load: number, pressure: number, inclination: number) => T,
): T {
  const load = clampTo(t.valid.load, state.load);
  if (!isLoaded(load)) return otherwise;
  return formula(load, ...airAndLean(t, state));
}

/** The nearest valid pressure and inclination. */
function airAndLean(t: MagicFormula61Coefficients, state: Omit<TyreState, "load">) {
  const pressure = clampTo(t.valid.pressure, state.pressure ?? t.NOMPRES);
  return [pressure, clampTo(t.valid.inclination, state.inclination ?? 0)] as const;
}

/** A tyre from its Magic Formula 6.1 coefficients; states are clamped to its valid range. */
export function magicFormula61Tyre(t: MagicFormula61Coefficients): FullTyre {
  return {
    name: t.name,
    nominalPressure: t.NOMPRES,
    valid: t.valid,
    coefficients: t,
    sideForce: (state) =>
      whenLoaded(t, state, 0, (load, pressure, inclination) =>
        sideForce61(t, clampTo(slipAngleRange, state.slipAngle), load, pressure, inclination),
      ),
    peakSideForce: (state) => whenLoaded(t, state, 0, (...at) => peakSideForce61(t, ...at)),
    peakSlipAngle: (state) => whenLoaded(t, state, 0, (...at) => peakSlipAngle61(t, ...at)),
    corneringStiffness: (state) =>
      whenLoaded(t, state, 0, (...at) => corneringStiffness61(t, ...at)),
    sideFriction: (state) => whenLoaded(t, state, 0, (...at) => sideFriction(t, ...at)),
    verticalStiffness: (state) => verticalStiffness61(t, state.load, ...airAndLean(t, state)),
    deflection: (state) => deflection61(t, state.load, ...airAndLean(t, state)),
    loadAt: (deflection, state = {}) => verticalForce61(t, deflection, ...airAndLean(t, state)),
    combinedForce: (state) =>
      whenLoaded(t, state, unloaded, (...at) =>
        combinedForce61(
          t,
          clampTo(slipRange, state.slip),
          clampTo(slipAngleRange, state.slipAngle),
          ...at,
        ),
      ),
    aligningMoment: (state) =>
      whenLoaded(t, state, 0, (...at) =>
        aligningMoment61(
          t,
          clampTo(slipRange, state.slip),
          clampTo(slipAngleRange, state.slipAngle),
          ...at,
        ),
      ),
    contactPatch: ({ load, pressure = t.NOMPRES }) =>
      contactPatch61(t, clampTo(t.valid.load, load), clampTo(t.valid.pressure, pressure)),
  };
}

/** The published road tyre, without pull to one side. */
export const referenceTyre: FullTyre = magicFormula61Tyre(withoutPull(referenceTyreCoefficients));

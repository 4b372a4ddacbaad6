import { findRoot } from "../solve.js";

/** The numbers that shape one Magic Formula curve. */
export interface MagicFormulaCurve {
  /** B, 1/unit of slip. */
  readonly stiffnessFactor: number;
  /** C, without unit, from 1 to 2. */
  readonly shape: number;
  /** D, N. */
  readonly peak: number;
  /** E for positive slip, at most 1. */
  readonly curvature: number;
  /** E for negative slip, at most 1. */
  readonly curvatureBelow: number;
  /** Added to the slip, in units of slip. */
  readonly horizontalShift: number;
  /** Added to the force, N. */
  readonly verticalShift: number;
}

/** A curve to be filled again and again, so that a solver allocates nothing. */
export type FillableCurve = { -readonly [K in keyof MagicFormulaCurve]: number };

/** A curve of no force. */
export function flatCurve(): FillableCurve {
  return {
    stiffnessFactor: 0,
    shape: 1,
    peak: 0,
    curvature: 0,
    curvatureBelow: 0,
    horizontalShift: 0,
    verticalShift: 0,
  };
}

/** Force at a slip, N: D sin(C atan(Bx − E(Bx − atan Bx))) – Pacejka 2012, eq. 4.E19. */
export function magicFormula(curve: MagicFormulaCurve, slip: number): number {
  const x = slip + curve.horizontalShift;
  const bx = curve.stiffnessFactor * x;
  const e = x < 0 ? curve.curvatureBelow : curve.curvature;
  const bent = bx - e * (bx - Math.atan(bx));
  return curve.peak * Math.sin(curve.shape * Math.atan(bent)) + curve.verticalShift;
}

/**
 * Slip at which the curve of positive slip is highest, in units of slip.
 *
 * There the sine of eq. 4.E19 is 1: Bx − E(Bx − atan Bx) = tan(π/2C) – Pacejka 2012, eq. 4.E19.
 */
export function peakSlip(curve: MagicFormulaCurve): number {
  const target = Math.tan(Math.PI / (2 * curve.shape));
  const e = curve.curvature;
  const bent = (bx: number) => bx - e * (bx - Math.atan(bx)) - target;
  let high = target;
  while (bent(high) < 0) high *= 2;
  return findRoot(bent, 0, high) / curve.stiffnessFactor - curve.horizontalShift;
}

import type { MagicFormula61Coefficients } from "../tyre/magic-formula-61-coefficients.js";
import { combinedForce61, type PlaneForce } from "../tyre/magic-formula-61-combined.js";
import type { AxleInTurn, TyreInTurn } from "./axle-in-turn.js";
import type { SideForceOf } from "./capacity.js";

const noForce: PlaneForce = { longitudinal: 0, side: 0 };

/** Forces of both tyres of an axle that slips along and across at once, N. */
export function axleForce(
  axle: AxleInTurn,
  slip: number,
  slipAngle: number,
  ay: number,
): PlaneForce {
  const inner = tyreForce(axle.tyre, axle.inner, slip, slipAngle, ay);
  const outer = tyreForce(axle.tyre, axle.outer, slip, slipAngle, ay);
  return { longitudinal: inner.longitudinal + outer.longitudinal, side: inner.side + outer.side };
}

function tyreForce(
  coefficients: MagicFormula61Coefficients,
  tyre: TyreInTurn,
  slip: number,
  slipAngle: number,
  ay: number,
): PlaneForce {
  const { load, inclination } = coefficients.valid;
  const fz = Math.min(load.maximum, tyre.load.offset + tyre.load.slope * ay);
  if (fz <= 1e-3) return noForce;
  const lean = tyre.inclination.offset + tyre.inclination.slope * ay;
  const within = Math.min(inclination.maximum, Math.max(inclination.minimum, lean));
  const angle = slipAngle + tyre.toe.offset + tyre.toe.slope * ay;
  return combinedForce61(coefficients, slip, angle, fz, tyre.pressure, within);
}

/** An axle that pushes or brakes as asked: its slip, its forces, and how slip changes them. */
export interface DrivenAxle {
  readonly slip: number;
  readonly force: PlaneForce;
  /** N for each unit of slip */
  readonly perSlip: PlaneForce;
}

const SMALL_SLIP = 1e-6;
const MOST_SLIP = 0.6;
const LONGEST_STEP = 0.03;

/**
 * The slip with which both tyres of an axle together push or brake with a force, by Newton steps.
 *
 * Both wheels slip alike, so that the more loaded tyre does more: brakes without locking, a
 * differential without spinning.
 *
 * @param demand - N, above 0 driving, below 0 braking
 * @param start - slip to begin with; 0 when unknown
 * @returns nothing when the tyres cannot give that force at this slip angle
 */
export function slipForDemand(
  axle: AxleInTurn,
  demand: number,
  slipAngle: number,
  ay: number,
  start = 0,
): DrivenAxle | undefined {
  let slip = start;
  for (let i = 0; i < 25; i++) {
    const force = axleForce(axle, slip, slipAngle, ay);
    const perSlip = rise(force, axleForce(axle, slip + SMALL_SLIP, slipAngle, ay), SMALL_SLIP);
    const short = demand - force.longitudinal;
    if (Math.abs(short) < 1e-7 * (1 + Math.abs(demand))) return { slip, force, perSlip };
    if (!(perSlip.longitudinal > 0)) return undefined; // past the peak
    const step = short / perSlip.longitudinal;
    slip += Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, step));
    if (Math.abs(slip) > MOST_SLIP) return undefined;
  }
  return undefined;
}

function rise(from: PlaneForce, to: PlaneForce, step: number): PlaneForce {
  return {
    longitudinal: (to.longitudinal - from.longitudinal) / step,
    side: (to.side - from.side) / step,
  };
}

const SMALL_ANGLE = 1e-6; // rad, for a difference
const IMPOSSIBLE = 1e6; // N

/**
 * Side force of an axle while its tyres also push or brake, as `axleSideForce` gives it without.
 *
 * As the slip angle grows, slip must grow too to keep the demand: dFy/dα at constant Fx is
 * ∂Fy/∂α − ∂Fy/∂κ·(∂Fx/∂α)/(∂Fx/∂κ).
 *
 * @param demand - N of both tyres together, above 0 driving
 * @returns a function that remembers its last slip; where the tyres cannot give the demand, its
 * force falls below any real one the more the axle slips, so that no search ends there
 */
export function sideForceUnder(demand: number): SideForceOf {
  let last = 0;
  return (axle, slipAngle, ay) => {
    const found =
      slipForDemand(axle, demand, slipAngle, ay, last) ??
      slipForDemand(axle, demand, slipAngle, ay);
    if (found === undefined)
      return { force: -IMPOSSIBLE * (1 + Math.abs(slipAngle)), slope: -IMPOSSIBLE };
    const { slip, force, perSlip } = found;
    last = slip;
    const perAngle = rise(force, axleForce(axle, slip, slipAngle + SMALL_ANGLE, ay), SMALL_ANGLE);
    const kept = perAngle.longitudinal / perSlip.longitudinal;
    return { force: force.side, slope: perAngle.side - perSlip.side * kept };
  };
}

import { findPeak } from "../solve.js";
import type { Tyre, TyreState } from "./tyre.js";

/**
 * Side force the tyre can give for each newton it carries, without unit; 0 for no load.
 *
 * @example
 * sideGrip(clubTyre, { load: 3000 }) // → 1.15, by hand: 1.30 − 0.05·3
 */
export function sideGrip(tyre: Tyre, state: TyreState): number {
  return state.load > 0 ? tyre.peakSideForce(state) / state.load : 0;
}

/**
 * Pressure of most grip at a load, Pa, inside the range the tyre is valid for.
 *
 * @example
 * bestPressure(clubTyre, { load: 3000 }) / 1000
 * // → 200.0, by hand: its friction falls with the square of the way from 200 kPa
 */
export function bestPressure(tyre: Tyre, state: Omit<TyreState, "pressure">): number {
  const { minimum, maximum } = tyre.valid.pressure;
  return findPeak((pressure) => sideGrip(tyre, { ...state, pressure }), minimum, maximum, 1).at;
}

/**
 * Lean into the turn of most side force, rad, inside the range the tyre is valid for.
 *
 * @example
 * const lean = bestInclination(clubTyre, { load: 3000 });
 * sideGrip(clubTyre, { load: 3000, inclination: lean }) >= sideGrip(clubTyre, { load: 3000 })
 * // → true, none better than the best
 */
export function bestInclination(tyre: Tyre, state: Omit<TyreState, "inclination">): number {
  const { minimum, maximum } = tyre.valid.inclination;
  return findPeak(
    (inclination) => sideGrip(tyre, { ...state, inclination }),
    minimum,
    maximum,
    1e-6,
  ).at;
}

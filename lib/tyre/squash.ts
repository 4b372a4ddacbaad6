import { requireInRange } from "../check.js";
import type { Tyre, TyreState } from "./tyre.js";

/**
 * How far a tyre is squashed by its load, m: so much lower stands its wheel.
 *
 * @param state - load (N, at least 0) and pressure (Pa above atmosphere; left out: nominal)
 * @throws Refusal for a load below 0
 * @example
 * tyreSquash(clubTyre, { load: 3000 }) // → 0.01467, by hand: 0.29·(20.7833 − 18.7602)/40
 */
export function tyreSquash(tyre: Tyre, state: TyreState): number {
  const load = requireInRange("load", state.load, 0, 1e6, "N");
  return tyre.deflection({ ...state, load });
}

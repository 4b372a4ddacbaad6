import { requireInRange } from "../check.js";
import type { LoadSensitiveTyre } from "./load-sensitive.js";
import type { Tyre, TyreState } from "./tyre.js";

/**
 * The simple tyre whose friction meets that of any tyre at two loads.
 *
 * @param loads - N, the lower first, both above 0
 * @param state - pressure (Pa) and inclination (rad); left out: nominal and upright
 * @returns load sensitivity 0 where friction would rise with load
 * @throws Refusal when the loads are not in order
 * @example
 * frictionLineOf(clubTyre, [2000, 4000]).loadSensitivity // → 0.000050, by hand: 0.05 for each kN
 */
export function frictionLineOf(
  tyre: Tyre,
  [low, high]: readonly [number, number],
  state: Omit<TyreState, "load"> = {},
): LoadSensitiveTyre {
  requireInRange("lower load", low, 1, 1e6, "N");
  requireInRange("upper load", high, 1.01 * low, 1e6, "N");
  const friction = (load: number) => tyre.peakSideForce({ ...state, load }) / load;
  const fall = (friction(low) - friction(high)) / (high - low);
  const loadSensitivity = Math.max(0, fall);
  return {
    frictionAtNoLoad: friction(low) + loadSensitivity * low,
    loadSensitivity,
    peakSlipAngle: tyre.peakSlipAngle({ ...state, load: low }),
    verticalStiffness: tyre.verticalStiffness({ ...state, load: low }),
  };
}

/**
 * The simple tyre with another load sensitivity and the same friction at one load.
 *
 * @param loadSensitivity - 1/N, at least 0
 * @param load - N at which nothing changes
 * @throws Refusal for a load sensitivity or load below 0
 * @example
 * const tyre = { frictionAtNoLoad: 1.2, loadSensitivity: 5e-5, peakSlipAngle: 0.1, verticalStiffness: 200e3 };
 * withLoadSensitivity(tyre, 1e-4, 3000).frictionAtNoLoad // → 1.35, by hand: 1.05 + 0.3
 */
export function withLoadSensitivity(
  tyre: LoadSensitiveTyre,
  loadSensitivity: number,
  load: number,
): LoadSensitiveTyre {
  requireInRange("load sensitivity", loadSensitivity, 0, 1e-2, "1/N");
  requireInRange("load", load, 0, 1e6, "N");
  const turned = (loadSensitivity - tyre.loadSensitivity) * load;
  return { ...tyre, loadSensitivity, frictionAtNoLoad: tyre.frictionAtNoLoad + turned };
}

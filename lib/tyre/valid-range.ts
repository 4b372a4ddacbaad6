import { rangeSentence } from "../check.js";
import { Refusal } from "../refusal.js";
import type { Tyre, TyreState, ValueRange } from "./tyre.js";

/** Whether a tyre carries anything: below a millinewton the wheel counts as off the ground. */
export function isLoaded(load: number): boolean {
  return load > 1e-3;
}

/** The nearest value inside a range. NaN is refused. */
export function clampTo(range: ValueRange, value: number): number {
  if (Number.isNaN(value))
    throw new Refusal(
      "out-of-range",
      rangeSentence("tyre input", value, range.minimum, range.maximum),
    );
  return Math.min(range.maximum, Math.max(range.minimum, value));
}

/**
 * What a tyre cannot be trusted with: the names of the quantities outside its valid range.
 *
 * @returns an empty list when the state is inside the range; else for instance ["pressure"]
 * @example
 * outsideValidRange(clubTyre, { load: 3000, pressure: 50e3 }) // → ["pressure"]
 */
export function outsideValidRange(tyre: Tyre, state: TyreState): (keyof Tyre["valid"])[] {
  const given = { inclination: 0, pressure: tyre.nominalPressure, ...state };
  const names = ["load", "pressure", "inclination"] as const;
  return names.filter((name) => clampTo(tyre.valid[name], given[name]) !== given[name]);
}

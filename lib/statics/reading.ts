import { requireInRange } from "../check.js";

/** What a rounded display can say about a limit. */
export interface Reading {
  /** Least and greatest true value that shows as this. */
  readonly least: number;
  readonly greatest: number;
  /** What follows: inside or outside for sure, or not to be told from this display. */
  readonly verdict: "inside" | "outside" | "cannot tell";
}

/**
 * What a rounded display hides: "100 mm" in steps of 1 mm may be anything from 99.5 to 100.5 mm.
 *
 * @param shown - the value on the display
 * @param step - the step of its last digit, above zero, in the unit of the value
 * @param limit - the limit of the class, in the same unit
 * @throws Refusal when a number is not finite or the step is not above zero
 * @example
 * readingAgainst(0.1, 0.001, 0.1, "least").verdict
 * // → "cannot tell", it may be 99.5 mm or 100.5 mm
 */
export function readingAgainst(
  shown: number,
  step: number,
  limit: number,
  kind: "least" | "greatest",
): Reading {
  requireInRange("shown value", shown, -Infinity, Infinity);
  requireInRange("step of the display", step, Number.MIN_VALUE, Infinity);
  requireInRange("limit", limit, -Infinity, Infinity);
  const [least, greatest] = [shown - step / 2, shown + step / 2];
  const [worst, best] =
    kind === "least" ? [least - limit, greatest - limit] : [limit - greatest, limit - least];
  const verdict = worst >= 0 ? "inside" : best < 0 ? "outside" : "cannot tell";
  return { least, greatest, verdict };
}

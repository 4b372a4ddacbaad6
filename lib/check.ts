import { Refusal } from "./refusal.js";

/**
 * Passes a number through when it lies inside its range.
 *
 * @param field - what the number is, in words, for the sentence of the error
 * @param value - the number to look at, in the same unit as the range
 * @param minimum - least allowed value (allowed itself)
 * @param maximum - greatest allowed value (allowed itself; may be Infinity)
 * @param unit - unit shown in the sentence
 * @returns the value, unchanged
 * @throws Refusal naming field, value and range; NaN and Infinity are never in range
 */
export function requireInRange(
  field: string,
  value: number,
  minimum: number,
  maximum: number,
  unit = "",
): number {
  if (Number.isFinite(value) && value >= minimum && value <= maximum) return value;
  throw new Refusal("out-of-range", rangeSentence(field, value, minimum, maximum, unit), {
    ...{ field, value, unit },
    least: minimum,
    most: maximum,
  });
}

/** The sentence that says what was wrong with a number: field, value and allowed range. */
export function rangeSentence(
  field: string,
  value: unknown,
  minimum: number,
  maximum: number,
  unit = "",
): string {
  const after = unit === "" ? "" : ` ${unit}`;
  const is =
    typeof value === "number" ? `${value}${after}` : (JSON.stringify(value) ?? String(value));
  return `${field} is ${is} but must be ${allowed(minimum, maximum, after)}.`;
}

function allowed(minimum: number, maximum: number, after: string): string {
  if (minimum === -Infinity && maximum === Infinity) return "a finite number";
  if (maximum === Infinity) return `at least ${minimum}${after}`;
  if (minimum === -Infinity) return `at most ${maximum}${after}`;
  return `from ${minimum} to ${maximum}${after}`;
}

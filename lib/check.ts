import { Refusal } from "./refusal.js";
import { type Quantity, quantities } from "./units.js";

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
  if (isInRange(value, minimum, maximum)) return value;
  throw new Refusal("out-of-range", rangeSentence(field, value, minimum, maximum, unit), {
    ...{ field, value, unit },
    least: minimum,
    most: maximum,
  });
}

/**
 * Passes an SI value through when it lies inside its range, as `requireInRange`; the refusal says
 * what the number measures, so that a reader can be told in other units.
 */
export function requireQuantity(
  field: string,
  quantity: Quantity,
  value: number,
  least: number,
  most: number,
): number {
  if (isInRange(value, least, most)) return value;
  const unit = quantities[quantity].si;
  const [is, from, to] = [value, least, most].map(inSixDigits) as [number, number, number];
  throw new Refusal("out-of-range", rangeSentence(field, is, from, to, unit), {
    ...{ field, value, least, most, unit, quantity },
  });
}

const isInRange = (value: number, least: number, most: number): boolean =>
  Number.isFinite(value) && value >= least && value <= most;

/** A number freed of the dust that sums and conversion leave, as sentences tell it. */
export const inSixDigits = (value: number): number => Number(value.toPrecision(6));

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

import type { Quantity } from "@rollbook/lib";
import { fromShown, toShown } from "../say/units.js";
import { reader } from "./reader.js";
import type { Interval } from "./spec.js";

/** The leading digits that an axis may end with. */
const calm = [1, 1.2, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 7, 8, 9, 10];
const slack = 1e-9; // what conversion leaves of a number that is round already
const hair = 1 + slack;

function calmAbove(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  const lead = calm.find((candidate) => value <= candidate * power * hair) ?? 10;
  return Number((lead * power).toPrecision(12));
}

/**
 * The end of an axis that holds a value: the next calm number away from zero, such as 6000 for 5130.
 *
 * @param quantity - what the axis shows; the end is then calm in the reader's unit
 * @throws Refusal when the value is not finite
 */
export function upTo(value: number, quantity: Quantity = "ratio"): number {
  if (!Number.isFinite(value)) throw new RangeError(`An axis cannot end at ${value}.`);
  if (value === 0) return upTo(fromShown(quantity, 1, reader.units), quantity);
  const shown = calmAbove(Math.abs(toShown(quantity, value, reader.units)));
  return Math.sign(value) * fromShown(quantity, shown, reader.units);
}

/** The largest of 1, 2 and 5 times a power of ten that goes four times or more into a width. */
function calmStep(width: number): number {
  const power = 10 ** Math.floor(Math.log10(width / 4));
  const lead = [5, 2].find((candidate) => 4 * candidate * power <= width * hair) ?? 1;
  return lead * power;
}

/** SI value of a number in the shown unit, freed of the dust that steps leave. */
const siOf = (quantity: Quantity, shown: number): number =>
  fromShown(quantity, Number(shown.toPrecision(12)), reader.units);

/** Calm numbers along an axis, four to eleven of them, SI. */
export function calmPlaces(quantity: Quantity, domain: Interval): number[] {
  const [from, to] = domain.map((end) => toShown(quantity, end, reader.units)) as [number, number];
  const step = calmStep(Math.abs(to - from));
  const first = Math.ceil(Math.min(from, to) / step - slack);
  const last = Math.floor(Math.max(from, to) / step + slack);
  return Array.from({ length: last - first + 1 }, (_, i) => siOf(quantity, (first + i) * step));
}

/**
 * An axis that holds everything from one value to another, with calm numbers at both ends.
 *
 * @param quantity - what the axis shows; the ends are then calm in the reader's unit
 * @throws Refusal when an end is not finite
 */
export function span(from: number, to: number, quantity: Quantity = "ratio"): Interval {
  if (!Number.isFinite(from) || !Number.isFinite(to))
    throw new RangeError(`An axis cannot go from ${from} to ${to}.`);
  const ends = [Math.min(from, to), Math.max(from, to)] as const;
  const [low, high] = ends.map((end) => toShown(quantity, end, reader.units)) as [number, number];
  const size = Math.max(Math.abs(low), Math.abs(high)) || 1;
  const step = calmStep(high - low > 1e-6 * size ? high - low : size);
  const least = Math.floor(low / step + slack);
  const most = Math.max(Math.ceil(high / step - slack), least + 1);
  return [siOf(quantity, least * step), siOf(quantity, most * step)];
}

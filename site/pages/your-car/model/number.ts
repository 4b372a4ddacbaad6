import { type NumberShape, parameters, type Quantity, quantities } from "@rollbook/lib";
import { decimalsIn } from "../../../say/shown-range.js";
import { fromShown, shownUnit, toShown, type UnitSystem, unitOf } from "../../../say/units.js";

const plain = (text: string): string =>
  text
    .trim()
    .replace(/^[−–]/, "-")
    .replace(/^([+-]?\d*),(\d+)/, "$1.$2");

/** Every unit in which the same thing may be given, such as m, mm, ft and in for a length. */
function unitsLike(quantity: Quantity): Map<string, number> {
  const { si } = quantities[quantity];
  const alike = (Object.keys(quantities) as Quantity[]).filter(
    (other) => quantities[other].si === si && si !== "",
  );
  const shown = alike.flatMap((other) => [shownUnit(other, "metric"), shownUnit(other, "us")]);
  return new Map(shown.map(({ unit, size }) => [unit, size]));
}

/**
 * The SI value of what somebody typed: a number in the reader's unit, or with a unit of its own.
 *
 * @returns undefined when it is not a number, or its unit is none of this quantity's
 */
export function numberFrom(
  text: string,
  quantity: Quantity,
  units: UnitSystem,
): number | undefined {
  const [, digits = "", unit = ""] = /^([+-]?(?:\d+\.?\d*|\.\d+))\s*(.*)$/.exec(plain(text)) ?? [];
  const value = digits === "" ? Number.NaN : Number(digits);
  if (!Number.isFinite(value)) return undefined;
  if (unit === "" || unit === unitOf(quantity, units)) return fromShown(quantity, value, units);
  const size = unitsLike(quantity).get(unit);
  return size === undefined ? undefined : value * size;
}

/** Digits after the point at which a value of this place is told apart from its neighbours. */
function digitsOf({ parameter, quantity, whole }: NumberShape, units: UnitSystem): number {
  if (whole) return 0;
  const decimals = parameter === undefined ? 2 : parameters[parameter].decimals;
  return decimalsIn(quantity, decimals + 1, units);
}

const withoutZeros = (text: string): string =>
  text.includes(".") ? text.replace(/\.?0+$/, "") : text;

/** An SI value as a reader would type it. */
export function shownNumber(value: number, shape: NumberShape, units: UnitSystem): string {
  const text = withoutZeros(toShown(shape.quantity, value, units).toFixed(digitsOf(shape, units)));
  return text === "-0" ? "0" : text;
}

/** The range of a place in the reader's unit, rounded inwards, such as "0.8 to 2.2 m". */
export function shownRangeOf(shape: NumberShape, units: UnitSystem): string {
  const { quantity, min, max } = shape;
  const unit = unitOf(quantity, units);
  const power = 10 ** digitsOf(shape, units);
  const [low, high] = [min, max].map((end) =>
    Number(toShown(quantity, end, units).toPrecision(12)),
  );
  const ends = [Math.ceil((low ?? 0) * power) / power, Math.floor((high ?? 0) * power) / power];
  const [from, to] = ends.map((end) => String(end).replace("-", "−"));
  return `${from} to ${to} ${unit}`.trim().replace(" °", "°");
}

/** A value brought to the end of its range where only conversion set it beyond; else as it is. */
export function settled(value: number, { min, max }: NumberShape): number {
  const hair = 1e-9 * (max - min);
  if (value < min && value >= min - hair) return min;
  return value > max && value <= max + hair ? max : value;
}

/** Whether the car file takes this value at a place. */
export const isTaken = (value: number, { min, max, whole }: NumberShape): boolean =>
  value >= min && value <= max && (!whole || Number.isInteger(value));

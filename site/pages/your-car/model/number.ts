import { type NumberShape, parameters } from "@rollbook/lib";
import { decimalsIn } from "../../../say/shown-range.js";
import { toShown, type UnitSystem, unitOf } from "../../../say/units.js";

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

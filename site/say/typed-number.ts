import { type Quantity, quantities } from "@rollbook/lib";
import { fromShown, shownUnit, type UnitSystem, unitOf } from "./units.js";

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

import { signed } from "../../lib/change/moved.js";
import { decimalsIn } from "../../lib/shown-range.js";
import {
  format,
  formatNumber,
  type Quantity,
  toShown,
  type UnitSystem,
  unitOf,
} from "../../lib/units.js";

/** Writes a quantity with so many digits in metric units, alone or with its unit. */
export interface Writer {
  readonly number: (quantity: Quantity, value: number, decimals: number) => string;
  readonly value: (quantity: Quantity, value: number, decimals: number) => string;
  /** With + or − in front. */
  readonly change: (quantity: Quantity, value: number, decimals: number) => string;
  readonly unit: (quantity: Quantity) => string;
}

/** A writer for the units of the reader. */
export function writer(system: UnitSystem): Writer {
  const digits = (quantity: Quantity, decimals: number) => decimalsIn(quantity, decimals, system);
  return {
    number: (quantity, value, decimals) =>
      formatNumber(toShown(quantity, value, system), digits(quantity, decimals)),
    change: (quantity, value, decimals) =>
      signed(toShown(quantity, value, system), digits(quantity, decimals)),
    value: (quantity, value, decimals) =>
      format(quantity, value, digits(quantity, decimals), system).replace("\u00a0", " "),
    unit: (quantity) => unitOf(quantity, system),
  };
}

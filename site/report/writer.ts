import type { Band } from "../../lib/certainty/band.js";
import type { Quantity } from "../../lib/units.js";
import { digitsFor } from "../say/digits.js";
import { signed } from "../say/figures.js";
import { decimalsIn } from "../say/shown-range.js";
import { format, formatNumber, toShown, type UnitSystem, unitOf } from "../say/units.js";

/** Writes a quantity with so many digits in metric units, or as few as its band has. */
type WriteNumber = (quantity: Quantity, value: number, decimals: number, band?: Band) => string;

/** Writes quantities alone or with their unit. */
export interface Writer {
  readonly number: WriteNumber;
  readonly value: WriteNumber;
  /** With + or − in front. */
  readonly change: WriteNumber;
  readonly unit: (quantity: Quantity) => string;
}

/** A writer for the units of the reader. */
export function writer(system: UnitSystem): Writer {
  const digits = (quantity: Quantity, decimals: number, band?: Band) =>
    band === undefined
      ? decimalsIn(quantity, decimals, system)
      : digitsFor(band, quantity, decimals, system);
  return {
    number: (quantity, value, ...to) =>
      formatNumber(toShown(quantity, value, system), digits(quantity, ...to)),
    change: (quantity, value, ...to) =>
      signed(toShown(quantity, value, system), digits(quantity, ...to)),
    value: (quantity, value, ...to) =>
      format(quantity, value, digits(quantity, ...to), system).replace("\u00a0", " "),
    unit: (quantity) => unitOf(quantity, system),
  };
}

import { decimalsIn, formatNumber, fromShown, type Quantity, toShown, unitOf } from "@rollbook/lib";
import { element, reader } from "@rollbook/page";
import { words } from "../words.js";
import { field, tellFault } from "./fields.js";

/** What a number measures, its range in SI, and digits after the point in the metric unit. */
export interface NumberRange {
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  readonly decimals: number;
  readonly whole?: boolean;
}

/** A number in the reader's unit; only what lies in the range is reported, in SI. */
export function numberField(
  id: string,
  label: string,
  range: NumberRange,
  value: number,
  report: (value: number) => void,
): HTMLElement {
  const { quantity, min, max, whole = false } = range;
  const unit = unitOf(quantity, reader.units);
  const decimals = decimalsIn(quantity, range.decimals, reader.units);
  const shown = (si: number) => toShown(quantity, si, reader.units);
  const input = element("input", { type: "number", id, step: "any", inputmode: "decimal" });
  input.value = String(Number(shown(value).toFixed(decimals)));
  const fits = (number: number) =>
    number >= min - 1e-9 && number <= max + 1e-9 && (!whole || Number.isInteger(number));
  input.addEventListener("change", () => {
    const typed = input.value === "" ? Number.NaN : input.valueAsNumber;
    const si = fromShown(quantity, typed, reader.units);
    const ends = [
      formatNumber(roundedIn(Math.ceil, shown(min), decimals), decimals),
      formatNumber(roundedIn(Math.floor, shown(max), decimals), decimals),
    ];
    tellFault(input, fits(si) ? undefined : words.numberFault(label, ends, unit, whole));
    if (fits(si)) report(si);
  });
  return field(id, label, input, unit);
}

/** An end of a range, rounded so that it lies inside. */
function roundedIn(round: (value: number) => number, value: number, decimals: number): number {
  const scale = 10 ** decimals;
  return round(Number((value * scale).toPrecision(12))) / scale;
}

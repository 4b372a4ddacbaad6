import { type Quantity, quantities, rangeSentence } from "@rollbook/lib";
import { toShown, type UnitSystem, unitOf } from "./units.js";

/** A number of a file that is out of its range: the sentence that the library has for it. */
const number =
  /^(?<field>\S+) is (?<value>-?[\d.]+(?:e[+-]?\d+)?) ?(?<si>\S*) but must be from (?<least>-?[\d.e+-]+) to (?<most>-?[\d.e+-]+)[^(]*(?:\([^()]* (?<handy>[^\s()]+)\))?\.$/;

/** What measures in these units, as the table of quantities has them; of lengths, those of a car. */
const quantityOf = (si: string, handy: string): Quantity | undefined =>
  (Object.keys(quantities) as Quantity[]).findLast(
    (one) => quantities[one].si === si && quantities[one].handy.unit === handy,
  );

/** What is wrong with a file, in the reader's units alone where those are not the file's. */
export function fileFaultInWords(sentence: string, units: UnitSystem): string {
  const { field, value, si = "", least, most, handy } = number.exec(sentence)?.groups ?? {};
  const quantity = quantityOf(si, handy?.replace(/^[-\d.]+/, "") ?? si);
  if (units === "metric" || field === undefined || quantity === undefined) return sentence;
  const shown = (text: string | undefined) =>
    Number(toShown(quantity, Number(text), units).toPrecision(4));
  const told = rangeSentence(
    field,
    shown(value),
    shown(least),
    shown(most),
    unitOf(quantity, units),
  );
  return told.replaceAll(" °", "°");
}

import { inSixDigits, type Refusal, rangeSentence } from "@rollbook/lib";
import { type Reader, spelt } from "./reader.js";
import { toShown, unitOf } from "./units.js";

/** Why something was refused, the number and its range in the reader's unit where it is known what it measures. */
export function refusalInWords({ message, number }: Refusal, reader: Reader): string {
  if (number?.quantity === undefined || typeof number.value !== "number")
    return spelt(message, reader);
  const { field, quantity } = number;
  const [value, least, most] = [number.value, number.least, number.most].map((si) =>
    inSixDigits(toShown(quantity, si, reader.units)),
  ) as [number, number, number];
  return spelt(rangeSentence(field, value, least, most, unitOf(quantity, reader.units)), reader);
}

import { inSixDigits, type RefusedNumber, rangeSentence } from "@rollbook/lib";
import { type Reader, spelt } from "./reader.js";
import { toShown, unitOf } from "./units.js";

/** What of a refusal its sentence takes, as it may have gone through a file. */
export interface Refused {
  readonly message: string;
  readonly number?: RefusedNumber | undefined;
}

/** Why something was refused, the number and its range in the reader's unit where it is known what it measures. */
export function refusalInWords({ message, number }: Refused, reader: Reader): string {
  if (number?.quantity === undefined || typeof number.value !== "number")
    return spelt(message, reader);
  const { field, quantity } = number;
  const [value, least, most] = [number.value, number.least, number.most].map((si) =>
    inSixDigits(toShown(quantity, si, reader.units)),
  ) as [number, number, number];
  return spelt(rangeSentence(field, value, least, most, unitOf(quantity, reader.units)), reader);
}

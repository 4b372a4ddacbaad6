import type { TyreDoubt } from "@rollbook/lib";
import { type Reader, spelt } from "./reader.js";
import { formatAlike } from "./shown-range.js";

const shown = {
  pressure: { quantity: "pressure", decimals: 0 },
  load: { quantity: "force", decimals: 0 },
  inclination: { quantity: "angle", decimals: 1 },
} as const;

/** Where a car asks a tyre for more than its data: a note beside the figures. */
export const tyreDoubtInWords = (doubt: TyreDoubt, reader: Reader): string =>
  spelt(told(doubt, reader), reader);

function told({ end, tyre, what, value, range }: TyreDoubt, { units }: Reader): string {
  const { quantity, decimals } = shown[what];
  const amount = (x: number) => formatAlike(quantity, x, decimals, units);
  const held = amount(value < range.minimum ? range.minimum : range.maximum);
  const reach =
    what === "pressure"
      ? `from ${amount(range.minimum)} to ${amount(range.maximum)}`
      : `up to ${held}`;
  const data = `the data of the tyre “${tyre}” reach ${reach}`;
  const capital = end === "front" ? "Front" : "Rear";
  if (what === "pressure")
    return `${capital} tyre pressure is ${amount(value)} but ${data}: the tyre is taken as at ${held}, and changes out there show no effect.`;
  const under = what === "load" ? `carries ${amount(value)}` : `leans ${amount(value)}`;
  return `${capital} tyres: at the limit in the middle of a corner one ${under}, but ${data}: it is taken as at ${held}.`;
}

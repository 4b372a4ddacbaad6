import { formatAlike } from "../shown-range.js";
import type { UnitSystem } from "../units.js";
import type { TyreDoubt } from "./tyre-doubts.js";

const shown = {
  pressure: { quantity: "pressure", decimals: 0 },
  load: { quantity: "force", decimals: 0 },
  inclination: { quantity: "angle", decimals: 1 },
} as const;

/** A doubt as a sentence for the reader of a set-up, such as a note beside its figures. */
export function tyreDoubtInWords(doubt: TyreDoubt, system: UnitSystem = "metric"): string {
  const { end, tyre, what, value, range } = doubt;
  const { quantity, decimals } = shown[what];
  const told = (x: number) => formatAlike(quantity, x, decimals, system);
  const held = told(value < range.minimum ? range.minimum : range.maximum);
  const reach =
    what === "pressure" ? `from ${told(range.minimum)} to ${told(range.maximum)}` : `up to ${held}`;
  const data = `the data of the tyre “${tyre}” reach ${reach}`;
  const capital = end === "front" ? "Front" : "Rear";
  if (what === "pressure")
    return `${capital} tyre pressure is ${told(value)} but ${data}: the tyre is taken as at ${held}, and changes out there show no effect.`;
  const under = what === "load" ? `carries ${told(value)}` : `leans ${told(value)}`;
  return `${capital} tyres: at the limit in the middle of a corner one ${under}, but ${data}: it is taken as at ${held}.`;
}

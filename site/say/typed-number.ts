import { DEGREE, GRAVITY, type Quantity, quantities } from "@rollbook/lib";
import {
  foot,
  fromShown,
  inch,
  pound,
  poundForce,
  shownUnit,
  type UnitSystem,
  unitOf,
} from "./units.js";

/** Units that people write and no page shows, by the SI unit of what they measure; kgf and bar – NIST SP 811 (2008), B.8. */
const alsoWritten: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  m: {
    ...{ cm: 0.01, '"': inch, "″": inch, "”": inch, inch, inches: inch },
    ...{ "'": foot, "′": foot, "’": foot, feet: foot, foot },
  },
  kg: { g: 1e-3, t: 1e3, lbs: pound },
  N: { kn: 1e3, kgf: GRAVITY, lb: poundForce, lbs: poundForce },
  "N/m": {
    ...{ "n/m": 1, "kn/m": 1e3, "lb/in": poundForce / inch, "lbs/in": poundForce / inch },
    ...{ "kgf/mm": GRAVITY * 1e3, "kg/mm": GRAVITY * 1e3 },
    ...{ "kgf/cm": GRAVITY * 100, "kg/cm": GRAVITY * 100 },
  },
  "N·s/m": { "ns/m": 1, "kns/m": 1e3, "lbs/in": poundForce / inch },
  Pa: { pa: 1, bar: 1e5, mbar: 100, hpa: 100 },
  rad: {
    deg: DEGREE,
    degrees: DEGREE,
    rad: 1,
    "'": DEGREE / 60,
    "′": DEGREE / 60,
    min: DEGREE / 60,
  },
  "m/s": { "m/s": 1, kph: 1 / 3.6, kmh: 1 / 3.6 },
  s: { sec: 1, seconds: 1, min: 60 },
  "": { "%": 0.01 },
};

/** Units as they are told apart: whatever case, spaces and dots between. */
const key = (unit: string): string => unit.toLowerCase().replaceAll(/[\s·*.]/g, "");

/** Every unit in which the same thing may be given, such as m, mm, ft and in for a length. */
function unitsLike(quantity: Quantity): Map<string, number> {
  const { si } = quantities[quantity];
  const alike = (Object.keys(quantities) as Quantity[]).filter(
    (other) => quantities[other].si === si && si !== "",
  );
  const shown = alike.flatMap((other) => [shownUnit(other, "metric"), shownUnit(other, "us")]);
  return new Map([
    ...Object.entries(alsoWritten[si] ?? {}),
    ...shown.map(({ unit, size }) => [key(unit), size] as const),
  ]);
}

const plain = (text: string): string =>
  text
    .trim()
    .replace(/^[−–]/, "-")
    .replace(/^([+-]?\d*),(\d+)/, "$1.$2");

/** A number as digits or as a fraction, and what stands behind it up to the next number. */
const term = /^(?:(?:(\d+)\s+)?(\d+)\/(\d+)|(\d+\.?\d*|\.\d+))\s*([^\d.]*)/;

interface Term {
  readonly value: number;
  readonly unit: string;
}

/** What was typed as numbers each with a unit, such as 7 ft 10 1/2 in; nothing where it is anything else. */
function termsOf(text: string): Term[] | undefined {
  const terms: Term[] = [];
  let rest = text;
  while (rest !== "") {
    const found = term.exec(rest);
    if (found === null) return undefined;
    const [whole, ones = "0", over, under, digits, unit = ""] = found;
    const value =
      digits === undefined ? Number(ones) + Number(over) / Number(under) : Number(digits);
    terms.push({ value, unit: unit.trim() });
    rest = rest.slice(whole.length);
  }
  return terms;
}

/**
 * The SI value of what somebody typed: a number or a fraction in the reader's unit, with a unit of
 * its own, or feet and inches. An angle may be a length at a diameter: `angleFromLength`.
 *
 * @returns undefined when it is not a number, or its unit is none of this quantity's
 */
export function numberFrom(
  text: string,
  quantity: Quantity,
  units: UnitSystem,
): number | undefined {
  const [, sign = "", unsigned = ""] = /^([+-]?)(.*)$/.exec(plain(text)) ?? [];
  const terms = termsOf(unsigned) ?? [];
  if (terms.length === 0) return angleFromLength(text, quantity, units);
  if (terms.length > 1 && !terms.every(({ unit }) => unit !== "")) return undefined;
  const own = unitOf(quantity, units);
  const known = unitsLike(quantity);
  const parts = terms.map(({ value, unit }) => {
    if (unit === "" || unit === own) return fromShown(quantity, value, units);
    return value * (known.get(key(unit)) ?? Number.NaN);
  });
  const sum = parts.reduce((all, part) => all + part, 0);
  if (!Number.isFinite(sum)) return angleFromLength(text, quantity, units);
  return sign === "-" ? -sum : sum;
}

/**
 * Toe or camber measured as a length, such as 1 mm at 380 mm per wheel, or 2 mm at 380 mm total:
 * how much wider the rim stands on one side of its middle than on the other, at a diameter.
 */
function angleFromLength(text: string, quantity: Quantity, units: UnitSystem): number | undefined {
  if (quantity !== "angle") return undefined;
  const [, wide = "", across = "", of = ""] =
    /^(.+?)\s+at\s+(.+?)\s+(per wheel|total)$/i.exec(text.trim()) ?? [];
  const [length, diameter] = [wide, across].map((part) =>
    part === "" || /^[\d.,]+$/.test(part) ? undefined : numberFrom(part, "lengthSmall", units),
  );
  if (length === undefined || diameter === undefined || !(diameter > 0)) return undefined;
  const sine = length / diameter / (of.toLowerCase() === "total" ? 2 : 1);
  return Math.abs(sine) <= 1 ? Math.asin(sine) : undefined;
}

/** Whether an angle was given as a length without saying at which diameter, and of how many wheels. */
export const isBareLength = (text: string, quantity: Quantity, units: UnitSystem): boolean =>
  quantity === "angle" &&
  !/^[\s\d.,+−–-]*$/.test(text) &&
  numberFrom(text, quantity, units) === undefined &&
  numberFrom(text.split(/\s+at\s+/)[0] ?? "", "lengthSmall", units) !== undefined;

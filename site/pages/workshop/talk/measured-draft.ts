import {
  type Measurement,
  type MeasurementEntry,
  measurable,
  NINE_IN_TEN,
  type Quantity,
} from "@rollbook/lib";
import { documentOf, format, reader } from "@rollbook/page";
import { plusMinus } from "../../../say/measure/plus-minus.js";
import { numberFrom } from "../../../say/typed-number.js";
import { unitOf } from "../../../say/units.js";
import { measured as said } from "../../../say/workshop/measured.js";

/** What is typed of a measurement and not in the log yet. */
export interface MeasuredDraft {
  readonly driver: string;
  readonly radius: string;
  /** Lap times, divided by spaces. */
  readonly laps: string;
  readonly roll: string;
  readonly rollWithin: string;
}

const fields = ["driver", "radius", "laps", "roll", "rollWithin"] as const;
const empty: MeasuredDraft = { driver: "", radius: "", laps: "", roll: "", rollWithin: "" };

/** It outlives a glance at another view, and a reload. */
export const draft = documentOf<MeasuredDraft>({
  key: "workshop/measured",
  empty,
  read: (kept) => {
    const parts = (kept ?? {}) as Readonly<Record<string, unknown>>;
    const texts = fields.map((key) => [key, parts[key]] as const);
    return texts.every(([, text]) => typeof text === "string")
      ? (Object.fromEntries(texts) as unknown as MeasuredDraft)
      : undefined;
  },
});

export const unitIn = (quantity: Quantity): string => unitOf(quantity, reader.units);

type Read = { readonly measurements: readonly Measurement[] } | { readonly fault: string };

/** What was typed as measurements, or the first thing that is wrong with it. */
export function measurementsFrom(typed: MeasuredDraft): Read {
  const parts = [circleOf(typed), rollOf(typed)];
  const fault = parts.find((part) => "fault" in part);
  if (fault !== undefined) return fault;
  const measurements = parts.flatMap((part) => ("measurements" in part ? part.measurements : []));
  return measurements.length === 0 ? { fault: said.empty } : { measurements };
}

const LAP = { min: 2, max: 600 }; // s, as the circle takes

function circleOf({ laps, radius }: MeasuredDraft): Read {
  const texts = laps.split(/[\s;]+/).filter((text) => text !== "");
  if (texts.length === 0) return { measurements: [] };
  const times = texts.map((text) => Number(text.replace(",", ".")));
  const wrong = times.findIndex((time) => !(time >= LAP.min && time <= LAP.max));
  if (wrong >= 0) return { fault: said.lapsFault(texts[wrong] ?? "") };
  const read = within(radius, "length", [3, 200], 1, said.radius);
  if (typeof read === "string") return { fault: read };
  return {
    measurements: [
      { ...measurable.circleRadius, value: read },
      ...times.map((value) => ({ ...measurable.circleLap, value })),
    ],
  };
}

const rolls = [-0.02, 0.02] as const; // rad/(m/s²), some 11 °/g

function rollOf({ roll, rollWithin }: MeasuredDraft): Read {
  if (roll.trim() === "" && rollWithin.trim() === "") return { measurements: [] };
  const value = within(roll, "rollGradient", rolls, 1, said.roll);
  const reach = within(rollWithin, "rollGradient", [1e-5, rolls[1]], 2, said.rollWithin);
  if (typeof value === "string") return { fault: value };
  if (typeof reach === "string") return { fault: reach };
  return { measurements: [{ ...measurable.rollGradient, value, spread: reach / NINE_IN_TEN }] };
}

/** A number in its range, or the sentence that says what it takes. */
function within(
  text: string,
  quantity: Quantity,
  [min, max]: readonly [number, number],
  decimals: number,
  what: string,
): number | string {
  const value = text.trim() === "" ? undefined : numberFrom(text, quantity, reader.units);
  return value !== undefined && value >= min && value <= max
    ? value
    : said.range(what, format(quantity, min, decimals), format(quantity, max, decimals));
}

/** What an entry says, in one line. */
export function measurementInWords({ driver = "", measurements }: MeasurementEntry): string {
  const of = ({ what }: { readonly what: string }) =>
    measurements.filter((one) => one.what === what);
  const radius = of(measurable.circleRadius).map(({ value }) =>
    said.circleRadius(format("length", value, 1)),
  );
  const laps = of(measurable.circleLap).map(({ value }) => value.toFixed(2));
  const roll = of(measurable.rollGradient).map(({ value, spread = 0 }) =>
    said.rollFiled(plusMinus({ value, spread }, "rollGradient", 2, reader)),
  );
  const all = [...radius, ...(laps.length > 0 ? [said.circleLaps(laps.join(" "))] : []), ...roll];
  return said.filed(driver, all.join("; "));
}

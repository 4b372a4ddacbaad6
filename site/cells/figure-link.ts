import type { Parameter } from "@rollbook/lib";
import { type ShownRange, shownRange } from "../say/shown-range.js";
import { fromShown, toShown, type UnitSystem, unitOf } from "../say/units.js";
import type { Inputs, ValuesOf } from "./spec.js";
import { words } from "./words.js";

/** What a link asks of a figure: values in SI, and a sentence for each that it cannot have. */
export interface Wanted {
  readonly values: Readonly<Record<string, number>>;
  readonly faults: readonly string[];
}

const longest = 40; // characters of a link that are shown again

/** The end of an address that opens a figure with its sliders where they are now: those that were moved. */
export function linkToFigure<I extends Inputs>(
  id: string,
  inputs: I,
  values: ValuesOf<I>,
): string | undefined {
  const moved = Object.entries<Parameter>(inputs).flatMap(([key, { quantity, start }]) => {
    const value = values[key] ?? start;
    return value === start ? [] : [[key, String(tidy(toShown(quantity, value)))]];
  });
  return moved.length > 0 ? `#${id}?${new URLSearchParams(moved)}` : undefined;
}

/** What the end of an address asks of a figure; nothing where it is about something else. */
export function wantedFrom<I extends Inputs>(
  hash: string,
  id: string,
  inputs: I,
  units: UnitSystem,
): Wanted | undefined {
  const [about, query] = hash.split(/\?(.*)/s);
  if (about !== `#${id}` || !query) return undefined;
  const values: Record<string, number> = {};
  const faults: string[] = [];
  for (const [key, text] of new URLSearchParams(query)) {
    const input = Object.hasOwn(inputs, key) ? inputs[key] : undefined;
    const given = text.slice(0, longest);
    if (!input) faults.push(words.noSuchInput(key.slice(0, longest)));
    else {
      const { value, fault } = valueFrom(given, input, units);
      if (value !== undefined) values[key] = value;
      if (fault !== undefined) faults.push(fault);
    }
  }
  return { values, faults };
}

/** A value in the metric unit shown, or the word `least` or `most`; out of range: the nearest in range. */
function valueFrom(text: string, input: Parameter, units: UnitSystem) {
  const { name, quantity } = input;
  const range = shownRange(input, units);
  const si = (shown: number) => fromShown(quantity, shown, units);
  if (text === "least") return { value: si(range.min) };
  if (text === "most") return { value: si(range.max) };
  const number = text.trim() === "" ? Number.NaN : Number(text);
  if (!Number.isFinite(number)) return { fault: words.notANumber(name, text) };
  const shown = tidy(toShown(quantity, fromShown(quantity, number), units));
  const kept = Math.min(range.max, Math.max(range.min, shown));
  if (kept === shown) return { value: fromShown(quantity, number) };
  return { value: si(kept), fault: outOfRange(input, range, shown, units) };
}

function outOfRange(
  { name, quantity }: Parameter,
  { min, max, decimals }: ShownRange,
  given: number,
  units: UnitSystem,
): string {
  const [from, to, not] = [min, max, given].map((value) => value.toFixed(decimals));
  return words.outOfRange(name, from ?? "", to ?? "", unitOf(quantity, units), not ?? "");
}

/** A number freed of the dust that conversion leaves. */
const tidy = (value: number): number => Number(value.toPrecision(9));

import {
  type Car,
  type Change,
  carLenses,
  endLenses,
  isEndChange,
  type Parameter,
  parameters,
} from "@rollbook/lib";
import { type Reader, spelt } from "./reader.js";
import { formatAlike } from "./shown-range.js";
import { MINUS } from "./units.js";

/** A lever where it is: of an axle, of one of its wheels, or of the whole car. */
type LeverAt = Omit<Change, "by"> & { readonly end?: string; readonly side?: string };

/** What a lever sets: its row of the parameter table. */
export function leverParameter(place: LeverAt): Parameter {
  const asked = place as Change;
  const { parameter } = isEndChange(asked) ? endLenses[asked.lever] : carLenses[asked.lever];
  return parameters[parameter];
}

/** A lever by its name, such as "front spring rate" or "rear left toe-in per wheel". */
export function leverName(place: LeverAt, reader: Reader): string {
  const asked = place as Change;
  const name = leverParameter(place).name.toLowerCase();
  if (!isEndChange(asked)) return spelt(name, reader);
  const { perSide } = endLenses[asked.lever];
  const side = perSide && asked.side !== undefined ? ` ${asked.side}` : "";
  return spelt(`${asked.end}${side} ${name}`, reader);
}

/**
 * A change as on a card: "front spring rate 60 → 65 N/mm".
 *
 * @param car - the car before the change
 */
export function changeLabel(change: Change, car: Car, reader: Reader): string {
  const { quantity, decimals } = leverParameter(change);
  const from = valueNow(change, car);
  const shown = (value: number) => formatAlike(quantity, value, decimals, reader.units);
  return `${leverName(change, reader)} ${shown(from)} → ${shown(from + change.by)}`;
}

/** What a lever is set to; of both wheels, the left one. */
function valueNow(change: Change, car: Car): number {
  if (!isEndChange(change)) return carLenses[change.lever].get(car) ?? 0;
  return endLenses[change.lever].get(car[change.end])[change.side ?? "left"];
}

/** By how much, such as "+5 N/mm". */
export function changeSize(change: Change, { units }: Reader): string {
  const { quantity, decimals } = leverParameter(change);
  const size = formatAlike(quantity, Math.abs(change.by), decimals, units);
  return `${change.by < 0 ? MINUS : "+"}${size}`;
}

import type { Car } from "../car/car.js";
import { type Parameter, parameters } from "../parameters.js";
import { formatAlike } from "../shown-range.js";
import type { UnitSystem } from "../units.js";
import { type Change, isEndChange } from "./change.js";
import { carLenses, endLenses } from "./levers.js";

/**
 * A change in words, as on a card: "front spring rate 60 → 65 N/mm".
 *
 * @param car - the car before the change
 */
export function labelOf(change: Change, car: Car, system: UnitSystem = "metric"): string {
  const { where, row, before } = wordsOf(change, car);
  const from = shown(row, before, system);
  return `${where}${row.name.toLowerCase()} ${from} → ${shown(row, before + change.by, system)}`;
}

function wordsOf(change: Change, car: Car): { where: string; row: Parameter; before: number } {
  if (!isEndChange(change)) {
    const { parameter, get } = carLenses[change.lever];
    return { where: "", row: parameters[parameter], before: get(car) ?? 0 };
  }
  const { parameter, get, perSide } = endLenses[change.lever];
  const side = perSide && change.side !== undefined ? ` ${change.side}` : "";
  const before = get(car[change.end])[change.side ?? "left"];
  return { where: `${change.end}${side} `, row: parameters[parameter], before };
}

function shown({ quantity, decimals }: Parameter, value: number, system: UnitSystem): string {
  return formatAlike(quantity, value, decimals, system);
}

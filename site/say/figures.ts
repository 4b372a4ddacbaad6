import type { CarFigures, Quantity } from "@rollbook/lib";
import type { Reader } from "./reader.js";
import { decimalsIn } from "./shown-range.js";
import { formatNumber, MINUS, toShown, type UnitSystem, unitOf } from "./units.js";

/** How a figure of the car is called and shown. */
interface FigureName {
  readonly name: string;
  readonly quantity: Quantity;
  /** Digits after the point in the metric unit. */
  readonly decimals: number;
}

/** The names of all figures, in the order in which a driver asks for them. */
export const figureNames: Readonly<Record<keyof CarFigures, FigureName>> = {
  rideHeight: { name: "ride height", quantity: "lengthSmall", decimals: 1 },
  camber: { name: "camber", quantity: "angle", decimals: 2 },
  toe: { name: "toe-in", quantity: "angle", decimals: 2 },
  rollGradient: { name: "roll", quantity: "rollGradient", decimals: 2 },
  frontTransferShare: { name: "front share of transfer", quantity: "share", decimals: 1 },
  rideFrequency: { name: "bounce", quantity: "frequency", decimals: 2 },
  oneWheelRate: { name: "one-wheel stiffness", quantity: "stiffness", decimals: 1 },
  bumpTravel: { name: "bump travel", quantity: "lengthSmall", decimals: 1 },
  patchArea: { name: "contact patch", quantity: "area", decimals: 1 },
  frontWeightShare: { name: "front weight", quantity: "share", decimals: 1 },
  crossWeightShare: { name: "cross weight", quantity: "share", decimals: 2 },
  rollFrequency: { name: "roll frequency", quantity: "frequency", decimals: 2 },
  rollDampingRatio: { name: "roll damping", quantity: "ratio", decimals: 2 },
  understeerGradient: { name: "understeer gradient", quantity: "understeerGradient", decimals: 2 },
  yawResponseTime: { name: "yaw response", quantity: "time", decimals: 3 },
};

/**
 * What moved, in words: every figure whose change shows in its last digit, such as
 * "front ride height −8.6 mm". A figure without end before or after is left out.
 *
 * @param moved - figures after minus figures before
 */
export function movedInWords(moved: CarFigures, { units }: Reader): string[] {
  const keys = Object.keys(figureNames) as (keyof CarFigures)[];
  return keys.flatMap((key) => {
    const change = moved[key];
    const { name } = figureNames[key];
    if (typeof change === "number") return visible(name, figureNames[key], change, units);
    return [
      ...visible(`front ${name}`, figureNames[key], change.front, units),
      ...visible(`rear ${name}`, figureNames[key], change.rear, units),
    ];
  });
}

function visible(
  name: string,
  { quantity, decimals }: FigureName,
  change: number,
  units: UnitSystem,
): string[] {
  if (!Number.isFinite(change)) return [];
  const text = signed(toShown(quantity, change, units), decimalsIn(quantity, decimals, units));
  const hidden = Number(text.replace(MINUS, "-")) === 0;
  return hidden ? [] : [`${name} ${text}${unitAfter(quantity, units)}`];
}

/** A share moves by points, not by percent of itself. */
function unitAfter(quantity: Quantity, units: UnitSystem): string {
  const unit = quantity === "share" ? "points" : unitOf(quantity, units);
  return unit === "" || unit === "°" ? unit : ` ${unit}`;
}

/** A change as text, with + or − in front. */
export function signed(value: number, decimals: number): string {
  const text = formatNumber(value, decimals);
  return value > 0 && Number(text) !== 0 ? `+${text}` : text;
}

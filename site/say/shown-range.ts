import type { Parameter, Quantity } from "@rollbook/lib";
import { format, shownUnit, toShown, type UnitSystem } from "./units.js";

/** What a slider shows: numbers in the shown unit. */
export interface ShownRange {
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** Digits after the point. */
  readonly decimals: number;
}

/** A number freed of the dust that conversion leaves. */
const tidy = (value: number): number => Number(value.toPrecision(12));

/** The largest of 1, 2 and 5 times a power of ten that is not above the step. */
function roundStep(step: number): number {
  const power = 10 ** Math.floor(Math.log10(step));
  const lead = [5, 2, 1].find((candidate) => candidate * power <= step * (1 + 1e-9)) ?? 1;
  return tidy(lead * power);
}

/**
 * Digits after the point that tell as much in this system as `decimals` tell in metric.
 *
 * One digit more or less for each power of ten between the two units, never below none.
 */
export function decimalsIn(quantity: Quantity, decimals: number, system: UnitSystem): number {
  const [own, metric] = [shownUnit(quantity, system).size, shownUnit(quantity, "metric").size];
  return Math.max(0, decimals + Math.round(Math.log10(own / metric)));
}

/** An SI value as text in the shown unit, with about as many telling digits as `decimals` gives in metric. */
export const formatAlike = (
  quantity: Quantity,
  value: number,
  decimals: number,
  system: UnitSystem,
): string => format(quantity, value, decimalsIn(quantity, decimals, system), system);

/** Digits after the point that tell two neighbouring multiples of a step apart; the step above 0. */
export const decimalsOfStep = (step: number): number =>
  Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));

/**
 * Range and step of a parameter in the shown unit, its step round in that unit.
 *
 * Metric ranges are the table's own. US ranges lie inside them, from one whole step to another.
 */
export function shownRange(parameter: Parameter, system: UnitSystem): ShownRange {
  const { quantity } = parameter;
  const [min, max, step] = [parameter.min, parameter.max, parameter.step].map((value) =>
    tidy(toShown(quantity, value, system)),
  ) as [number, number, number];
  const decimals = decimalsIn(quantity, parameter.decimals, system);
  const alike = shownUnit(quantity, system).size === shownUnit(quantity, "metric").size;
  if (alike) return { min, max, step, decimals };
  const round = roundStep(step);
  const digits = Math.min(6, decimalsOfStep(round));
  return {
    min: tidy(Math.ceil(min / round - 1e-9) * round),
    max: tidy(Math.floor(max / round + 1e-9) * round),
    step: round,
    decimals: Math.max(decimals, digits),
  };
}

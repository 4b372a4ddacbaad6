import type { Band, Quantity } from "@rollbook/lib";
import { decimalsIn } from "./shown-range.js";
import { toShown, type UnitSystem } from "./units.js";

/**
 * Digits after the point with which a figure is shown, so that it has no more than its band.
 *
 * Half the width of the band has two digits where they are 10 to 35, else one, and the figure ends
 * where that does – Particle Data Group, Review of Particle Physics, introduction 5.3, from memory.
 *
 * @param decimals - digits after the point in the metric unit where nothing is in doubt: never more
 * @returns at least 0
 */
export function digitsFor(
  { low, high }: Band,
  quantity: Quantity,
  decimals: number,
  system: UnitSystem = "metric",
): number {
  const most = decimalsIn(quantity, decimals, system);
  const half = toShown(quantity, high.value - low.value, system) / 2;
  if (half === 0) return most;
  const power = Math.floor(Math.log10(half));
  const lead = half / 10 ** power; // 1 up to 10
  const finest = lead < 3.55 || lead >= 9.5 ? 1 - power : -power;
  return Math.min(most, Math.max(0, lead >= 9.5 ? finest - 1 : finest));
}

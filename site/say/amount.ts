import type { Reader } from "./reader.js";
import { formatAlike } from "./shown-range.js";

/** A shift of balance, or any other acceleration, in the reader's unit; metric digits after the point. */
export const acceleration = (value: number, { units }: Reader, decimals = 2): string =>
  formatAlike("acceleration", value, decimals, units);

/** Which end a shift of balance moves towards. */
export const towards = (shift: number): string =>
  shift > 0 ? "towards the front sliding first" : "towards the rear sliding first";

/** A shift of balance with its way: "by 0.12 m/s² towards the front sliding first". */
export function shiftInWords(shift: number, reader: Reader): string {
  if (Math.abs(shift) < SHOWN) return "by nothing";
  return `by ${acceleration(Math.abs(shift), reader)} ${towards(shift)}`;
}

/** m/s² from which a shift is not shown as nothing. */
export const SHOWN = 0.005;

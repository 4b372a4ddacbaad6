import { MINUS } from "./units.js";

/** Minutes and seconds, such as "3:07" or "−0:20". */
export function clockText(minutes: number): string {
  const seconds = Math.ceil(minutes * 60 - 1e-6);
  const size = Math.abs(seconds);
  return `${seconds < 0 ? MINUS : ""}${Math.floor(size / 60)}:${String(size % 60).padStart(2, "0")}`;
}

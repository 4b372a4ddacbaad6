import type { SharpeningId } from "@rollbook/lib";
import { measurementWords } from "../../../say/measure/measurements.js";
import { sharpeningWords } from "../../../say/measure/next.js";
import { type Reader, spelt } from "../../../say/reader.js";

/** Where something is measured, and with what. */
export function wayOf(
  id: SharpeningId,
  reader: Reader,
): { readonly at: string; readonly how: string } {
  const { at, how } = sharpeningWords[id];
  const own = measurementWords[id];
  return { at, how: spelt(how ?? `${own?.tools}; ${own?.minutes}`, reader) };
}

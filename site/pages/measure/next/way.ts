import type { SharpeningId } from "@rollbook/lib";
import { measurementWords } from "../../../say/measure/measurements.js";
import { type Reader, spelt } from "../../../say/reader.js";

/** Where the page tells how something is measured, and with what. */
export function wayOf(
  id: SharpeningId,
  reader: Reader,
): { readonly at: string; readonly how: string } {
  const { tools = "", minutes = "" } = measurementWords[id] ?? {};
  return { at: `#${id}`, how: spelt(`${tools}; ${minutes}`, reader) };
}

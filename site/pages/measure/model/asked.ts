import type { Car, Measured, Propagated } from "@rollbook/lib";
import { type FormPlace, linesOf, meanAt, type Sheet, toolOf } from "./input.js";
import type { Found, Remark, Result } from "./result.js";

/** What a form's reader has put in, and the car it is about. */
export interface Asked {
  readonly car: Car;
  readonly sheet: Sheet;
  readonly form: FormPlace;
}

/** Works a form out. */
export type Work = (asked: Asked) => Result;

/** The means of fields, all of them; or the keys of those without readings. */
export function allOf<Key extends string>(
  { sheet, form }: Asked,
  keys: readonly Key[],
  tool: (key: Key) => string,
): { readonly means?: Record<Key, Measured>; readonly missing: readonly Key[] } {
  const read = keys.map((key) => [key, meanAt(sheet, form, key, tool(key))] as const);
  const missing = read.flatMap(([key, mean]) => (mean === undefined ? [key] : []));
  if (missing.length > 0) return { missing };
  return { means: Object.fromEntries(read) as Record<Key, Measured>, missing };
}

/** A number that was found, as it is shown. */
export function found(
  key: string,
  measured: Measured | Propagated,
  [quantity, decimals]: readonly [Found["quantity"], number],
  more: Pick<Found, "path" | "predicted"> = {},
): Found {
  const { value, spread } = measured;
  const [most] = "from" in measured ? measured.from : [];
  const mostly = most !== undefined && most.share > 0.5 && { mostly: most.name };
  return { key, value, spread, quantity, decimals, ...more, ...mostly };
}

/** The lines of a form that are complete. */
export const lines = (asked: Asked) => linesOf(asked.sheet, asked.form);
/** How far its tape may be off, m. */
export const tapeOf = ({ sheet, form }: Asked) => toolOf(sheet, form, "tape");
/** What is said of lines that lie too far off. */
export const oddLines = (byChance: number): Remark[] =>
  byChance < 0.05 ? [{ code: "scatters" }] : [];

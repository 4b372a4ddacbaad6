import type { UnitSystem } from "./units.js";

export type Spelling = "tyre" | "tire";

/** For whom a sentence is written. */
export interface Reader {
  readonly units: UnitSystem;
  readonly spelling: Spelling;
}

/** How a reader of those units spells. */
export const spellingFor = (units: UnitSystem): Spelling => (units === "us" ? "tire" : "tyre");

/** The reader who chose those units. */
export const readerWith = (units: UnitSystem): Reader => ({ units, spelling: spellingFor(units) });

/** A text as the reader spells it. */
export function spelt(text: string, { spelling }: Pick<Reader, "spelling">): string {
  return spelling === "tire" ? text.replace(/\b([Tt])yre(s?)\b/g, "$1ire$2") : text;
}

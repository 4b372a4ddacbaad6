import type { UnitSystem } from "@rollbook/lib";
export type Spelling = "tyre" | "tire";
/** For whom a sentence is written. */
export interface Reader {
  readonly units: UnitSystem;
  readonly spelling: Spelling;
}
/** How a reader of those units spells. */
export declare const spellingFor: (units: UnitSystem) => Spelling;
/** The reader who chose those units. */
export declare const readerWith: (units: UnitSystem) => Reader;
/** A text as the reader spells it. */
export declare function spelt(text: string, { spelling }: Pick<Reader, "spelling">): string;

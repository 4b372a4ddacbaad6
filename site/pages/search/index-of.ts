import type { Options } from "minisearch";
import { fold } from "./fold.js";

/** Something that can be found. */
export interface Entry {
  /** The address, and so unlike any other. */
  readonly id: string;
  readonly kind: "section" | "figure" | "word" | "page";
  readonly title: string;
  /** Which chapter it stands in, if any. */
  readonly where: string;
  readonly text: string;
  /** What else it is called, after commas. */
  readonly also: string;
}

/** What the build writes for the page: the index, and the names that mean the same. */
export interface SearchData {
  readonly index: object;
  readonly names: readonly (readonly string[])[];
}

/** Words that say nothing of what is looked for. */
const small = new Set(
  "a an and are as at be by for from in is it its of on or that the to with".split(" "),
);

/** How texts are indexed, the same when the index is made and when it is read. */
export const indexOptions: Options<Entry> = {
  fields: ["title", "also", "text"],
  storeFields: ["kind", "title", "where", "text", "also"],
  tokenize: fold,
  processTerm: (word) => (small.has(word) ? null : word),
  searchOptions: {
    boost: { title: 3, also: 3 },
    prefix: (_word, place, words) => place === words.length - 1,
  },
};

import { type Car, type Next, nextToMeasure, type Sharpening } from "@rollbook/lib";
import { nextAnchor, nextInShort, titles } from "../say/measure/titles.js";
import { type Reader, spelt } from "../say/reader.js";
import type { BandsSoFar } from "./ask.js";

/** One thing to measure. */
export interface ToldNext extends Sharpening {
  /** The entry of the list on the page Measure. */
  readonly anchor: string;
  readonly title: string;
  /** What it would be worth. */
  readonly narrows: string;
}

/** What to measure next, what narrows most first. */
export const nextTold = ({ doubts }: BandsSoFar, car: Car, reader: Reader): ToldNext[] =>
  nextToMeasure(car, doubts).map((one) => toldNext(one, doubts.changes.length > 0, reader));

const toldNext = (
  { id, end, ofBalance, ofChanges }: Next,
  hasChanges: boolean,
  reader: Reader,
): ToldNext => ({
  ...{ id, ...(end && { end }) },
  anchor: nextAnchor(id, end),
  title: titleOf({ id, ...(end && { end }) }, reader),
  narrows: hasChanges
    ? nextInShort.narrows(percent(ofBalance), percent(ofChanges))
    : nextInShort.narrowsBalance(percent(ofBalance)),
});

/** How something that can be measured is called. */
export function titleOf({ id, end }: Sharpening, reader: Reader): string {
  const title = spelt(titles[id], reader);
  return end === undefined ? title : nextInShort.ofAxle(title, end);
}

const percent = (part: number): string => `${Math.max(0, Math.round(100 * part))} %`;

import {
  type Car,
  type ChangeBand,
  isEndChange,
  type Next,
  nextToMeasure,
  phaseNames,
} from "@rollbook/lib";
import type { BandsSoFar } from "../../../bands/ask.js";
import { changeLabel } from "../../../say/change.js";
import { measurementWords } from "../../../say/measure/measurements.js";
import { sharpeningWords, nextWords as words } from "../../../say/measure/next.js";
import { type Reader, spelt } from "../../../say/reader.js";

type Verdict = "sure" | "likely" | "cannot say";

function inWords(verdict: Verdict, which: string): string {
  return verdict === "cannot say" ? words.cannot : words[verdict](which);
}

/** Which end gives up first in each part of a corner, as far as that can be told. */
export const endsTold = ({ margins }: BandsSoFar): (readonly [part: string, told: string])[] =>
  phaseNames.map((name) => {
    const { value, sign } = margins[name].understeerMargin;
    return [name, inWords(sign.verdict, value > 0 ? words.front : words.rear)];
  });

/** Which way each change moves the balance in the middle of the corner, as far as that can be told. */
export function changesTold(
  { changes }: BandsSoFar,
  car: Car,
  reader: Reader,
): (readonly [change: string, told: string])[] {
  const told = ({ change, phases }: ChangeBand) => {
    if (phases === undefined || !isEndChange(change)) return [];
    const { value, sign } = phases.middle.understeerMargin;
    const way = value > 0 ? words.towardsFront : words.towardsRear;
    return [[changeLabel(change, car, reader), inWords(sign.verdict, way)] as const];
  };
  return changes.flatMap(told);
}

/** One thing to measure, as the list shows it. */
export interface ToldNext {
  readonly key: string;
  readonly href: string;
  readonly title: string;
  readonly how: string;
  readonly narrows: string;
}

/** What to measure next, what narrows most first. */
export function nextTold(bands: BandsSoFar, car: Car, reader: Reader): ToldNext[] {
  const { doubts } = bands;
  return doubts === undefined ? [] : nextToMeasure(car, doubts).map((one) => toldNext(one, reader));
}

function toldNext({ id, end, ofBalance, ofChanges }: Next, reader: Reader): ToldNext {
  const { at, named, how } = sharpeningWords[id];
  const own = measurementWords[id];
  const title = spelt(named ?? own?.title ?? id, reader);
  return {
    key: `${id} ${end ?? ""}`,
    href: at,
    title: end === undefined ? title : words.ofAxle(title, end),
    how: spelt(how ?? `${own?.tools}; ${own?.minutes}`, reader),
    narrows: words.narrows(percent(ofBalance), percent(ofChanges)),
  };
}

const percent = (part: number): string => `${Math.max(0, Math.round(100 * part))} %`;

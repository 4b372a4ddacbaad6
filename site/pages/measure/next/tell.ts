import { type Car, type ChangeBand, isEndChange, phaseNames } from "@rollbook/lib";
import type { BandsSoFar } from "../../../bands/ask.js";
import { changeLabel } from "../../../say/change.js";
import { nextWords as words } from "../../../say/measure/next.js";
import type { Reader } from "../../../say/reader.js";

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

import {
  type Car,
  type Change,
  isEndChange,
  type Practice,
  parameters,
  type ScoreReason,
  type WayBackFact,
} from "@rollbook/lib";
import { shiftInWords } from "../amount.js";
import { balanceText } from "../balance.js";
import { changeLabel } from "../change.js";
import { inList } from "../in-list.js";
import type { Reader } from "../reader.js";
import { questionFor } from "../report.js";
import { formatAlike } from "../shown-range.js";

/**
 * A change as practice names it: as on a card, but for seats, which are put back after every other
 * change and so have to say that here they are the change.
 *
 * @param car - the car before the change
 */
export function practiceLabel(change: Change, car: Car, reader: Reader): string {
  if (change.lever !== "seatTurns" || !isEndChange(change) || change.side !== undefined)
    return changeLabel(change, car, reader);
  const { quantity, decimals } = parameters.seatTurns;
  const turns = formatAlike(quantity, Math.abs(change.by), decimals, reader.units);
  const [way, height] = change.by > 0 ? ["up", "higher"] : ["down", "lower"];
  const part = change.end === "front" ? "nose" : "tail";
  return `${change.end} spring seats ${way} by ${turns} (${part} left ${height})`;
}

/** Why an answer is worth what it is. */
export function scoreReasonInWords(
  reason: ScoreReason,
  { car, changed }: Pick<Practice, "car" | "changed">,
  reader: Reader,
): string {
  const shift = (value: number) => shiftInWords(value, reader);
  const named = (change: Change) => practiceLabel(change, car, reader);
  const all = (changes: readonly Change[]) => inList(changes.map(named));
  switch (reason.code) {
    case "not-said":
      return `Not said: ${questionFor(reason.field)}`;
    case "moved-so":
      return `Balance moved ${shift(reason.shift)} in ${reason.phase}, as you say.`;
    case "moved-otherwise":
      return `You say ${signInWords(reason.said)} in ${reason.phase}; there balance moved ${shift(reason.shift)}.`;
    case "moved-most":
      return `It moved most in ${reason.phase}: ${shift(reason.shift)}.`;
    case "nobody-could-tell":
      return `Nobody could tell: balance moved most in ${reason.phase}, ${shift(reason.shift)}.`;
    case "could-be-told":
      return `It was there to be told: ${balanceText(reason.points)} in ${reason.phase}.`;
    case "it-was":
      return `It was: ${all(reason.changes)}.`;
    case "one-of-them":
      return `${named(reason.change)} is one of the two.`;
    case "feels-alike":
      return `${all(reason.changes)} would feel alike here: the seat cannot tell them apart.`;
    case "would-move":
      return `${all(reason.changes)}, made as large as what moved, would move balance ${shift(reason.would)} in ${reason.phase}; the car moved ${shift(reason.moved)}.`;
    case "cannot-be-changed":
      return "This car cannot be changed so.";
    case "way-back":
      return `${practiceLabel(reason.change, changed, reader)} ${wayBackInWords(reason.way)}`;
    case "left-most":
      return `What is left is most in ${reason.phase}: ${shift(reason.shift)}.`;
    case "breaks-limit":
      return "It breaks a limit of the class.";
  }
}

/** How a change leads back, after its name. */
export function wayBackInWords(way: WayBackFact): string {
  switch (way.code) {
    case "overshoots":
      return `overshoots: it moves the car back by ${percent(way.along)} of what had moved, past the one you know.`;
    case "takes-back":
      return `takes back ${percent(way.share)} of what had moved.`;
    case "hardly-felt":
      return "can hardly be felt in this corner.";
    case "makes-it-worse":
      return "makes it worse: it moves the car further the same way.";
    case "does-not-help":
      return "does not help: what it takes back in one part of the corner it adds in another.";
  }
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

function signInWords(balance: number): string {
  if (balance === 0) return "that nothing changed";
  return `that the ${balance > 0 ? "front" : "rear"} slides first`;
}

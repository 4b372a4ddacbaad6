import { endsWithoutLeanCost, type SheetRow } from "@rollbook/lib";
import { format, reader } from "@rollbook/page";
import {
  easedNotes,
  leanNote,
  nearTippingNotes,
  onStopClauses,
  tradeClauses,
} from "../../../say/balance-notes.js";
import { warningInWords } from "../../../say/plan.js";
import { words } from "../words.js";

/** What to beware of in a run, in sentences: warnings of the plan, and tipping that is near. */
export function bewares(row: SheetRow): string[] {
  return [...row.warnings.map((warning) => warningInWords(warning, reader)), ...nearTipping(row)];
}

/** Of these what is said on a card in the hands of those who work on the car: it tips, or nearly. */
export function tippingOf(row: SheetRow): string[] {
  const over = row.warnings.filter(({ code }) => code === "tips-over");
  return [...over.map((warning) => warningInWords(warning, reader)), ...nearTipping(row)];
}

const nearTipping = (row: SheetRow): string[] =>
  nearTippingNotes(row.nearTipping, row.tips, format);

/** What else there is to know of the car of a run, and of what was done to it. */
export function asides({ eased, onStops, trades, toDo, car }: SheetRow): string[] {
  const leant = endsWithoutLeanCost(car).filter((end) =>
    toDo.some((change) => change.lever === "camber" && change.end === end),
  );
  return [
    ...tradeClauses(trades, format).map(words.plan.itIs),
    ...onStopClauses(onStops, "comes to be").map(words.talk.clause),
    ...easedNotes(eased, format),
    ...leanNote(leant),
  ];
}

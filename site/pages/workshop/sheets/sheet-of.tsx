import type { ComponentType } from "preact";
import { AnswerKey } from "./answer-key.js";
import { Briefing } from "./briefing.js";
import { ChangeCards } from "./change-cards.js";
import type { Kind } from "./chosen.js";
import { DaySummary } from "./day-summary.js";
import { HandOut } from "./hand-out.js";
import { LetterCards } from "./letters.js";
import type { OfDay } from "./paper.js";
import { RunSheet } from "./run-sheet.js";
import { PredictionSlips, ReportSlips } from "./slips.js";
import { TakeHomePages } from "./take-home.js";

const sheetOf: Readonly<Record<Kind, ComponentType<OfDay>>> = {
  run: RunSheet,
  cards: ChangeCards,
  predict: PredictionSlips,
  report: ReportSlips,
  letters: LetterCards,
  handOut: HandOut,
  briefing: Briefing,
  home: TakeHomePages,
  summary: DaySummary,
  key: AnswerKey,
};

/** The sheet of a kind. */
export function SheetOf({ kind, ...of }: OfDay & { readonly kind: Kind }) {
  const Sheet = sheetOf[kind];
  return <Sheet {...of} />;
}

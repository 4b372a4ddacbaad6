import {
  comparisons,
  confidences,
  driverInputs,
  grades,
  howOften,
  phaseNames,
  type Report,
  speedClasses,
  type Venue,
} from "@rollbook/lib";
import { element } from "@rollbook/page";
import { type Chip, chips, plainChips } from "../parts/chips.js";
import { words } from "../words.js";
import { balanceAsked } from "./balance-scale.js";

const { report: said } = words;

type Answer = <Field extends keyof Report>(field: Field, value: Report[Field]) => void;

/** What is done with an answer, and with a corner's name while it is typed and once it is. */
export interface Answering {
  readonly answer: Answer;
  readonly typeCorner: (corner: string) => void;
  readonly endCorner: (corner: string) => void;
}

/** The questions of the report, the needed ones first. */
export function questions(
  report: Report,
  run: number,
  venue: Venue | undefined,
  answering: Answering,
): HTMLElement[] {
  const { answer } = answering;
  return [
    ...whereAsked(report, venue, answering),
    chips("ask-phase", said.phase, plainChips(phaseNames), report.phase, (phase) =>
      answer("phase", phase),
    ),
    chips("ask-input", said.input, plainChips(driverInputs), report.input, (input) =>
      answer("input", input),
    ),
    balanceAsked(report, answer),
    chips("ask-often", said.howOften, plainChips(howOften), report.howOften, (often) =>
      answer("howOften", often),
    ),
    ...(run > 1 ? [againstAsked(report, answer)] : []), // before the first run there is none
    chips("ask-sure", said.confidence, plainChips(confidences), report.confidence, (sure) =>
      answer("confidence", sure),
    ),
    wordsAsked(report, answer),
  ];
}

function againstAsked({ againstLastRun }: Report, answer: Answer): HTMLElement {
  const choices = plainChips(comparisons);
  return chips("ask-against", said.againstLastRun, choices, againstLastRun, (against) =>
    answer("againstLastRun", against),
  );
}

/** Corners to tap where the venue is known, and speed and grade where it is not. */
function whereAsked(report: Report, venue: Venue | undefined, answering: Answering): HTMLElement[] {
  const { answer } = answering;
  const names = venue?.corners.map(({ name }) => name) ?? [];
  const isOther = report.corner !== undefined && !names.includes(report.corner);
  const other = { value: "", text: said.otherCorner };
  const list: Chip<string>[] = [...names.map((name) => ({ value: name, text: name })), other];
  const chosen = isOther ? "" : report.corner;
  const tapped =
    names.length === 0
      ? []
      : [chips("ask-corner", said.corner, list, chosen, (name) => answer("corner", name))];
  if (names.length > 0 && !isOther) return tapped;
  return [...tapped, cornerTyped(report, answering), ...speedAndGrade(report, answer)];
}

function cornerTyped(report: Report, { typeCorner, endCorner }: Answering): HTMLElement {
  const input = element("input", { type: "text", id: "ask-corner-text", maxlength: 200 });
  input.value = report.corner ?? "";
  input.addEventListener("input", () => typeCorner(input.value));
  input.addEventListener("change", () => endCorner(input.value));
  return element(
    "div",
    { class: "field" },
    element("label", { for: "ask-corner-text" }, said.cornerText),
    input,
  );
}

function speedAndGrade(report: Report, answer: Answer): HTMLElement[] {
  return [
    chips("ask-speed", said.speedClass, plainChips(speedClasses), report.speedClass, (speed) =>
      answer("speedClass", speed),
    ),
    chips("ask-grade", said.grade, plainChips(grades), report.grade, (grade) =>
      answer("grade", grade),
    ),
  ];
}

function wordsAsked(report: Report, answer: Answer): HTMLElement {
  const input = element("textarea", { id: "ask-words", rows: 2, maxlength: 2000 });
  input.value = report.words ?? "";
  input.addEventListener("input", () => answer("words", input.value));
  return element(
    "div",
    { class: "field" },
    element("label", { for: "ask-words" }, said.words),
    input,
  );
}

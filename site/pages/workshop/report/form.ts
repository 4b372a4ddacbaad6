import {
  comparisons,
  confidences,
  driverInputs,
  GREATEST_BALANCE,
  grades,
  howOften,
  MINUS,
  phaseNames,
  type Report,
  speedClasses,
  type Venue,
} from "@rollbook/lib";
import { element } from "@rollbook/page";
import { type Chip, chips, plainChips } from "../parts/chips.js";
import { words } from "../words.js";

const { report: said } = words;

type Answer = <Field extends keyof Report>(field: Field, value: Report[Field]) => void;

/** The questions of the report, the needed ones first. */
export function questions(report: Report, venue: Venue | undefined, answer: Answer): HTMLElement[] {
  return [
    ...whereAsked(report, venue, answer),
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
    chips(
      "ask-against",
      said.againstLastRun,
      plainChips(comparisons),
      report.againstLastRun,
      (against) => answer("againstLastRun", against),
    ),
    chips("ask-sure", said.confidence, plainChips(confidences), report.confidence, (sure) =>
      answer("confidence", sure),
    ),
    wordsAsked(report, answer),
  ];
}

/** Corners to tap where the venue is known, and speed and grade where it is not. */
function whereAsked(report: Report, venue: Venue | undefined, answer: Answer): HTMLElement[] {
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
  return [...tapped, cornerTyped(report, answer), ...speedAndGrade(report, answer)];
}

function cornerTyped(report: Report, answer: Answer): HTMLElement {
  const input = element("input", { type: "text", id: "ask-corner-text", maxlength: 200 });
  input.value = report.corner ?? "";
  input.addEventListener("input", () => answer("corner", input.value));
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

/** −3 to +3 in a row, the front at the left. */
function balanceAsked(report: Report, answer: Answer): HTMLElement {
  const scale = Array.from({ length: 2 * GREATEST_BALANCE + 1 }, (_, i) => i - GREATEST_BALANCE);
  const row = scale.map((value) => ({
    value,
    text: balanceText(value),
    spoken: `${balanceText(value)}: ${meaningOf(value)}`,
  }));
  const means = element("p", { class: "quiet", id: "balance-means" });
  const tell = (balance: number | undefined) => {
    means.textContent = balance === undefined ? said.balanceHelp : meaningOf(balance);
  };
  const chosen = (balance: number) => {
    tell(balance);
    answer("balance", balance);
  };
  tell(report.balance);
  const asked = chips("ask-balance", said.balance, row, report.balance, chosen, "scale");
  asked.append(
    element(
      "p",
      { class: "ends" },
      element("span", {}, `← ${said.frontSlides}`),
      element("span", {}, `${said.rearSlides} →`),
    ),
    means,
  );
  return asked;
}

const meaningOf = (balance: number): string =>
  said.balances[String(balance) as keyof typeof said.balances];

/** A balance as drivers write it: −2, 0, +1. */
export const balanceText = (balance: number): string =>
  balance > 0 ? `+${balance}` : balance < 0 ? `${MINUS}${-balance}` : "0";

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

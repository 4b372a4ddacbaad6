import {
  type Car,
  type PhaseShifts,
  type Practice,
  phaseNames,
  type Report,
  type Score,
  shiftsIn,
  toShown,
  unitOf,
} from "@rollbook/lib";
import { element, reader, shareAddress, spell } from "@rollbook/page";
import { signed } from "../../../say/figures.js";
import { scoreReasonInWords } from "../../../say/practice.js";
import { addressOf } from "../../sight.js";
import { whyOf } from "../puzzle/why.js";
import { points, totalOf } from "../record/history.js";
import { words } from "../words.js";
import { button, notice, part, sentences } from "./parts.js";
import { rowsOf } from "./traces.js";

/** The three answers, scored. */
export interface Scores {
  readonly report: Score;
  readonly cause: Score;
  readonly next: Score;
}

export const sharesOf = ({ report, cause, next }: Scores) => ({
  report: report.score,
  cause: cause.score,
  next: next.score,
});

/** What each answer was worth, why, and how far balance moved. */
export function scorePart(
  practice: Practice,
  after: Car,
  scores: Scores,
  { report, answers }: { report: Report; answers: Readonly<Record<"cause" | "next", string>> },
  acts: readonly HTMLElement[],
): HTMLElement {
  const { corner, car, shifts } = practice;
  const left = shiftsIn(corner, car, after, car);
  return part(
    "score",
    words.score,
    element("p", { class: "total" }, words.total(points(totalOf(sharesOf(scores))))),
    ...scored("report", practice, scores.report, sureness(report, scores.report)),
    ...scored("cause", practice, scores.cause, [words.yourAnswer(answers.cause)]),
    reason(practice),
    ...scored("next", practice, scores.next, [words.yourAnswer(answers.next)]),
    element("h3", {}, words.shifts),
    shiftTable(shifts, left),
    element("p", { class: "acts" }, ...acts),
  );
}

function scored(
  name: keyof Scores,
  practice: Practice,
  { score, reasons }: Score,
  first: readonly string[],
): HTMLElement[] {
  return [
    element("h3", {}, words.partScore(words.parts[name], points(score))),
    sentences([...first, ...reasons.map((one) => scoreReasonInWords(one, practice, reader))]),
  ];
}

/** Why the hidden change moved balance, and the figure that shows it. */
function reason({ hidden }: Practice): HTMLElement {
  const { because, sight } = whyOf(hidden);
  const see = words.seeIt(Number.parseInt(sight.chapter, 10));
  return element(
    "p",
    { class: "why" },
    element("b", {}, words.why),
    ` ${spell(because)} `,
    element("a", { href: addressOf(sight) }, see),
    ".",
  );
}

function sureness({ confidence }: Report, { score }: Score): string[] {
  if (confidence !== "certain") return [];
  return [score > 0 ? words.certain.right : words.certain.wrong];
}

function shiftTable(hidden: PhaseShifts, left: PhaseShifts): HTMLElement {
  const heads = [words.phase, words.byHidden, words.left];
  const rows = phaseNames.map((phase) => [phase, shiftText(hidden[phase]), shiftText(left[phase])]);
  return element(
    "div",
    { class: "table", role: "region", tabindex: 0, "aria-label": words.shifts },
    rowsOf(heads, rows),
  );
}

function shiftText(shift: number): string {
  const unit = unitOf("acceleration", reader.units);
  const decimals = reader.units === "us" ? 3 : 2;
  return `${signed(toShown("acceleration", shift, reader.units), decimals)}\u00a0${unit}`;
}

/** Ways to give the puzzle to somebody else. */
export function sharing(link: string): HTMLElement[] {
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(location.href.replace(/#.*|$/s, link));
      notice.textContent = words.linkCopied;
    } catch {
      history.replaceState(null, "", link);
      notice.textContent = words.linkShown;
    }
  };
  const code = element("a", { href: shareAddress(`practice.html${link}`) }, words.asCode);
  return [button("copy-link", words.link, () => void copy()), code];
}

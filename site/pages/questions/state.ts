import {
  dueOn,
  formFor,
  type Given,
  type IdeaName,
  misconceptions,
  type PollCount,
  type QuestionForm,
} from "@rollbook/lib";
import type { words } from "../../say/questions/words.js";

export type PartName = keyof typeof words.part;
export const partNames: readonly PartName[] = ["before", "one", "review", "after", "class", "file"];

/** A question by its name. */
export interface Which {
  readonly idea: IdeaName;
  readonly form: QuestionForm;
}

/** Which part of the page is open, and which question stands in it. */
interface Route {
  readonly part: PartName;
  readonly which?: Which;
}

/** The part that helps most now: what is due, else the first check, else a single question. */
function usualPart(answers: readonly Given[], day: number): PartName {
  if (dueOn(day, answers).length > 0) return "review";
  return answers.length === 0 ? "before" : "one";
}

/** What the end of an address asks for. */
export function routeOf(hash: string, answers: readonly Given[], day: number): Route {
  const [name, text] = hash.slice(1).split(/\?(.*)/s);
  const part = partNames.find((one) => one === name) ?? usualPart(answers, day);
  const query = new URLSearchParams(text);
  const named = misconceptions.find(({ idea }) => idea === query.get("question"));
  if (named === undefined) return { part };
  const form = query.get("form") === "twin" ? "twin" : "first";
  return { part, which: { idea: named.idea, form } };
}

export const firstQuestion: Which = { idea: "stiffer-moves-more", form: "first" };

/** The other question of the same idea. */
export const otherOf = ({ idea, form }: Which): Which => ({
  idea,
  form: form === "first" ? "twin" : "first",
});

export type Check = "before" | "after";

/** What a check has asked and what it is to ask next. */
export function checkOf(check: Check, answers: readonly Given[]) {
  const given = answers.filter(({ occasion }) => occasion === check);
  const open = misconceptions.filter(({ idea }) => !given.some(({ asked }) => asked === idea));
  const form = check === "before" ? "first" : "twin";
  const next: Which | undefined = open[0] && { idea: open[0].idea, form };
  return { given, next, number: misconceptions.length - open.length + 1 };
}

/** A question that is due, and how many are. */
export interface Due {
  readonly which: Which;
  readonly count: number;
}

export function dueNow(answers: readonly Given[], day: number): Due | undefined {
  const due = dueOn(day, answers);
  const [first] = due;
  if (first === undefined) return undefined;
  const which = { idea: first.asked, form: formFor(first.asked, answers) };
  return { which, count: due.length };
}

/** The counts of a vote as they are typed. */
export type Typed = readonly [a: string, b: string, c: string, d: string];
export const noCards: Typed = ["0", "0", "0", "0"];

const numberIn = (text: string): number => (text.trim() === "" ? Number.NaN : Number(text));

export function countOf([a, b, c, d]: Typed): PollCount {
  return { a: numberIn(a), b: numberIn(b), c: numberIn(c), d: numberIn(d) };
}

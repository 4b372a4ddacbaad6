import { misconceptions, type PollLetter, type QuestionForm } from "@rollbook/lib";
import { documentOf, format, reader, spell } from "@rollbook/page";
import { type Asked, askAbout } from "../../../say/questions/asked.js";
import { ideas } from "../../../say/questions/ideas.js";
import { isOfRun, type Put, runQuestion } from "./run-question.js";

/** A question that the workbook has ready for a vote. */
interface ReadyQuestion {
  readonly key: string;
  readonly belief: string;
  readonly form: QuestionForm;
  readonly ask: () => Asked;
}

/** Every question of the bank about the reader's car: the first of each idea, then its twin. */
export const readyQuestions: readonly ReadyQuestion[] = misconceptions.flatMap(({ idea }) =>
  (["first", "twin"] as const).map((form) => ({
    key: `${idea} ${form}`,
    belief: ideas[idea].belief,
    form,
    ask: () => askAbout(reader.car, idea, form, format),
  })),
);

export const letters: readonly PollLetter[] = ["a", "b", "c", "d"];

/** Cards of each letter as they were typed. */
export type Cards = Readonly<Record<PollLetter, string>>;

/** What is being put to the vote. */
export interface Vote {
  /** Key of a ready question; empty for one of the instructor's own. */
  readonly ready: string;
  readonly text: string;
  readonly right?: PollLetter;
  readonly cards: { readonly first: Cards; readonly second: Cards };
  /** The run for which its own question was chosen last. */
  readonly madeFor?: number;
  /** Entries of the log that hold the counts so far. */
  readonly filed: { readonly first?: string; readonly second?: string };
}

const noCards: Cards = { a: "0", b: "0", c: "0", d: "0" };
const noVote: Vote = {
  ready: "",
  text: "",
  cards: { first: noCards, second: noCards },
  filed: {},
};

function asCards(kept: unknown): Cards {
  const typed = (kept ?? {}) as Record<string, unknown>;
  const of = (letter: PollLetter) => {
    const text = typed[letter];
    return typeof text === "string" ? text.slice(0, 10) : "0";
  };
  return { a: of("a"), b: of("b"), c: of("c"), d: of("d") };
}

/** Reads a vote that was kept. */
export function asVote(kept: unknown): Vote | undefined {
  const { ready, text, right, cards, filed, madeFor } = (kept ?? {}) as Record<string, unknown>;
  if (typeof ready !== "string" || typeof text !== "string") return undefined;
  const { first, second } = (cards ?? {}) as Record<string, unknown>;
  const ids = (filed ?? {}) as Record<string, unknown>;
  const letter = letters.find((one) => one === right);
  return {
    ready,
    text: text.slice(0, 2000),
    ...(letter && { right: letter }),
    ...(typeof madeFor === "number" && { madeFor }),
    cards: { first: asCards(first), second: asCards(second) },
    filed: {
      ...(typeof ids.first === "string" && { first: ids.first }),
      ...(typeof ids.second === "string" && { second: ids.second }),
    },
  };
}

export const vote = documentOf({ key: "workshop/vote", empty: noVote, read: asVote });

/** Changes what is put to the vote; another question is counted anew. */
export const changeVote = (more: Partial<Vote>): void =>
  void vote.setTyped({
    ...vote.now.value,
    ...more,
    ...(more.ready !== undefined && { cards: noVote.cards, filed: {} }),
  });

let last: { key: string; asked: Put | undefined } | undefined;

/** The question that is chosen, about the reader's car or the run at hand; nothing for one of the instructor's own. */
export function chosenQuestion(): Put | undefined {
  const { ready } = vote.now.value;
  if (isOfRun(ready)) return runQuestion(ready);
  if (last?.key !== ready)
    last = { key: ready, asked: readyQuestions.find(({ key }) => key === ready)?.ask() };
  return last.asked;
}

export const letterAt = (index: number): PollLetter => letters[index] ?? "a";

/** What is put to the vote, and which answer is right as far as that is said. */
export function put() {
  const asked = chosenQuestion();
  const { text, right } = vote.now.value;
  return asked === undefined
    ? { question: text.trim(), right }
    : { question: spell(asked.ask), right: letterAt(asked.answer) };
}

import type { PollLetter } from "@rollbook/lib";
import { format, reader } from "@rollbook/page";
import { type Asked, askAbout } from "../../questions/bank/asked.js";
import { ideas } from "../../questions/bank/ideas.js";
import { misconceptions } from "../../questions/bank/index.js";
import type { Form } from "../../questions/bank/question.js";

/** A question that the workbook has ready for a vote. */
export interface ReadyQuestion {
  readonly key: string;
  readonly belief: string;
  readonly form: Form;
  readonly ask: () => Asked;
}

/** Every question of the bank about the reader's car: the first of each idea, then its twin. */
export const readyQuestions: readonly ReadyQuestion[] = misconceptions.flatMap((misconception) =>
  (["first", "twin"] as const).map((form) => ({
    key: `${misconception.idea} ${form}`,
    belief: ideas[misconception.idea].belief,
    form,
    ask: () => askAbout(reader.car, misconception, form, format),
  })),
);

export const letters: readonly PollLetter[] = ["a", "b", "c", "d"];

/** The letter of an answer by its place. */
export const letterAt = (index: number): PollLetter => letters[index] ?? "a";

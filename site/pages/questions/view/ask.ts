import { format, reader } from "@rollbook/page";
import { type Asked, askAbout } from "../bank/asked.js";
import type { IdeaName } from "../bank/ideas.js";
import { misconceptions } from "../bank/index.js";
import type { Form } from "../bank/question.js";
import { words } from "../words.js";

/** The question of that name, for the reader's car and in the reader's units. */
export function ask(idea: IdeaName, form: Form): Asked {
  const misconception = misconceptions.find((one) => one.idea === idea);
  if (!misconception) throw new RangeError(`no question is named ${idea}`);
  return askAbout(reader.car, misconception, form, format);
}

export const topicOf = (idea: IdeaName): string => words.topics[idea] ?? idea;

/** What a question is about, in a sentence. */
export function aboutOf({ about, instead }: Asked): string {
  return instead === undefined
    ? words.onCar(about)
    : words.onOtherCar(about, reader.car.name, instead);
}

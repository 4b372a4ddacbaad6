import type { IdeaName } from "@rollbook/lib";
import { format, reader } from "@rollbook/page";
import { type Asked, askAbout } from "../../../say/questions/asked.js";
import { words } from "../../../say/questions/words.js";
import { refusalInWords } from "../../../say/refusal.js";
import type { Which } from "../state.js";

/** A question about the reader's car and in the reader's units. */
export const ask = ({ idea, form }: Which): Asked => askAbout(reader.car, idea, form, format);

export const topicOf = (idea: IdeaName): string => words.topics[idea] ?? idea;

/** What a question is about, in a sentence. */
export function aboutOf({ about, instead }: Asked): string {
  return instead === undefined
    ? words.onCar(about)
    : words.onOtherCar(about, reader.car.name, refusalInWords(instead, reader));
}

export const letterOf = (index: number): string => words.letters[index] ?? "";

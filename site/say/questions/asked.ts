import {
  answersAlike,
  type Car,
  demoCar,
  type IdeaName,
  type QuestionForm,
  Refusal,
  rightAnswer,
} from "@rollbook/lib";
import { addressOf } from "../figure-state.js";
import type { Refused } from "../refusal.js";
import { type Idea, ideas } from "./ideas.js";
import type { Said, Worded } from "./in-words.js";
import { questions } from "./questions.js";
import { type Show, tellIn } from "./tell.js";

/** An answer as it may be shown. */
interface AskedChoice extends Said {
  /** The wrong idea behind it; none for the right answer. */
  readonly idea?: IdeaName;
}

/** A question ready to be asked. */
export interface Asked {
  readonly idea: IdeaName;
  readonly form: QuestionForm;
  readonly ask: string;
  readonly choices: readonly AskedChoice[];
  /** Index of the right answer, found by the model. */
  readonly answer: number;
  /** The car that it is about. */
  readonly about: string;
  /** Why it is not about the reader's own car, where it is not. */
  readonly instead?: Refused;
}

/**
 * A question whose right answer is known.
 *
 * @throws Refusal unless there is one, and the reader can tell all four apart
 */
function settled({ question, ask, choices }: Worded): Pick<Asked, "ask" | "choices" | "answer"> {
  const answer = rightAnswer(question);
  const texts = new Set(choices.map(({ text }) => text));
  if (texts.size < choices.length) throw answersAlike();
  const claims = Object.values(question.claims);
  const shown = choices.map((choice, i) => {
    const idea = claims[i]?.idea;
    return { ...choice, ...(idea !== undefined && { idea }) };
  });
  return { ask, choices: shown, answer };
}

/**
 * Asks about a car, or, where that car cannot be asked about, about the workbook's own.
 *
 * @param show - how numbers are shown to the reader
 */
export function askAbout(car: Car, idea: IdeaName, form: QuestionForm, show: Show): Asked {
  const misconception = questions.find((one) => one.idea === idea);
  if (misconception === undefined) throw new RangeError(`no question is named ${idea}`);
  const about = (which: Car) => ({
    idea,
    form,
    about: which.name,
    ...settled(misconception[form](which, tellIn(show))),
  });
  try {
    return about(car);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { ...about(demoCar), instead: error };
  }
}

/** Address of the figure that refutes an idea, its sliders set. */
export function refutation(idea: IdeaName): Idea & { readonly href: string } {
  return { ...ideas[idea], href: addressOf(ideas[idea].shownBy) };
}

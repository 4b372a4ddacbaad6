import { type Car, demoCar, Refusal } from "@rollbook/lib";
import { addressOf } from "../../sight.js";
import { type Idea, type IdeaName, ideas } from "./ideas.js";
import type { Draft, Form, Misconception } from "./question.js";
import { type Show, tellIn } from "./tell.js";

/** An answer as it may be shown: why it is right or not, and for a wrong one where to see it. */
export interface AskedChoice {
  readonly text: string;
  readonly because: string;
  /** The wrong idea behind it; none for the right answer. */
  readonly idea?: IdeaName;
}

/** A question ready to be asked. */
export interface Asked {
  readonly idea: IdeaName;
  readonly form: Form;
  readonly ask: string;
  readonly choices: readonly AskedChoice[];
  /** Index of the right answer, found by the model. */
  readonly answer: number;
  /** The car that it is about. */
  readonly about: string;
  /** Why it is not about the reader's own car, where it is not. */
  readonly instead?: string;
}

const unclear = "on it the model does not tell the four answers clearly apart.";

/**
 * Finds the right answer of a draft.
 *
 * @throws Refusal unless the model bears out one answer alone, the one that was meant to be
 * right, and the reader can tell all four apart
 */
function settle({ ask, choices }: Draft): Pick<Asked, "ask" | "choices" | "answer"> {
  const answer = choices.findIndex(({ isSo }) => isSo);
  const alone = choices.filter(({ isSo }) => isSo).length === 1;
  const meant = choices[answer]?.idea === undefined;
  const texts = new Set(choices.map(({ text }) => text));
  if (!alone || !meant || texts.size < choices.length) throw new Refusal("does-not-suit", unclear);
  return { ask, choices: choices.map(({ isSo: _, ...shown }) => shown), answer };
}

/**
 * Asks about a car, or, where that car cannot be asked about, about the workbook's own.
 *
 * @param show - how numbers are shown to the reader
 */
export function askAbout(car: Car, misconception: Misconception, form: Form, show: Show): Asked {
  const { idea } = misconception;
  const about = (which: Car) => ({
    idea,
    form,
    about: which.name,
    ...settle(misconception[form](which, tellIn(show))),
  });
  try {
    return about(car);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { ...about(demoCar), instead: error.message };
  }
}

/** Address of the figure that refutes an idea, its sliders set. */
export function refutation(idea: IdeaName): Idea & { readonly href: string } {
  return { ...ideas[idea], href: addressOf(ideas[idea].sight) };
}

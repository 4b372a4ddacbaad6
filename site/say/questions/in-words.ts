import type { Car, IdeaName, Misconception, QuestionFacts, QuestionForm } from "@rollbook/lib";
import type { Tell } from "./tell.js";

/** What one answer says, and why it is right or not. */
export interface Said {
  readonly text: string;
  readonly because: string;
}

/** The words of a question: what is asked, and each of its claims. */
interface Words<Q extends QuestionFacts> {
  readonly ask: string;
  readonly choices: Readonly<Record<keyof Q["claims"], Said>>;
}

/** A question about a car, and its words. */
export interface Worded {
  readonly question: QuestionFacts;
  readonly ask: string;
  /** In the order of the claims. */
  readonly choices: readonly Said[];
}

/** A misconception whose two questions have words. */
export interface WordedMisconception
  extends Readonly<Record<QuestionForm, (car: Car, tell: Tell) => Worded>> {
  readonly idea: IdeaName;
}

/** Words for the two questions of a misconception. */
export function inWords<First extends QuestionFacts, Twin extends QuestionFacts>(
  { idea, first, twin }: Misconception<First, Twin>,
  words: {
    readonly first: (facts: First, tell: Tell) => Words<First>;
    readonly twin: (facts: Twin, tell: Tell) => Words<Twin>;
  },
): WordedMisconception {
  return { idea, first: worded(first, words.first), twin: worded(twin, words.twin) };
}

const worded =
  <Q extends QuestionFacts>(facts: (car: Car) => Q, words: (facts: Q, tell: Tell) => Words<Q>) =>
  (car: Car, tell: Tell): Worded => {
    const question = facts(car);
    const { ask, choices } = words(question, tell);
    const codes: readonly (keyof Q["claims"])[] = Object.keys(question.claims);
    return { question, ask, choices: codes.map((code) => choices[code]) };
  };

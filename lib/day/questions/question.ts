import type { Car } from "../../car/car.js";
import type { IdeaName } from "./ideas.js";

/** What one answer claims of a car. */
export interface Claim {
  /** What the model says of this car; never typed. */
  readonly isSo: boolean;
  /** The wrong idea that speaks from this answer; the answer meant to be right has none. */
  readonly idea?: IdeaName;
}

/** A question as put to one car: its four claims by a word for each, in the order of the letters, beside the numbers that it speaks of. */
export interface QuestionFacts {
  readonly claims: Readonly<Record<string, Claim>>;
}

/** A claim of those who hold a wrong idea. */
export const held = (idea: IdeaName, isSo: boolean): Claim => ({ idea, isSo });

/** The claim that is meant to be right. */
export const meant = (isSo: boolean): Claim => ({ isSo });

/** A claim that is right for some cars and a wrong idea for the others. */
export const either = (idea: IdeaName, isSo: boolean): Claim =>
  isSo ? meant(isSo) : held(idea, isSo);

/** Whether a question is the first of a misconception or its twin: the same idea, other numbers. */
export type QuestionForm = "first" | "twin";

/**
 * A wrong idea that many hold, and two questions that find it, each a function of a car that throws
 * a `Refusal` where this car cannot be asked about.
 */
export interface Misconception<
  First extends QuestionFacts = QuestionFacts,
  Twin extends QuestionFacts = QuestionFacts,
> {
  readonly idea: IdeaName;
  /** The chapter that teaches better; its reader may be asked from the next chapter on. */
  readonly chapter: string;
  readonly first: (car: Car) => First;
  readonly twin: (car: Car) => Twin;
}

import type { Car } from "@rollbook/lib";
import type { IdeaName } from "./ideas.js";
import type { Tell } from "./tell.js";

/** One of the four answers: what somebody may hold, whether the model bears it out, and why. */
export interface Choice {
  readonly text: string;
  /** What the model says of this car; never typed. */
  readonly isSo: boolean;
  readonly because: string;
  /** The wrong idea that speaks from this answer; the answer meant to be right has none. */
  readonly idea?: IdeaName;
}

/** A question as put to one car, before anyone has checked that it is fair. */
export interface Draft {
  readonly ask: string;
  readonly choices: readonly [Choice, Choice, Choice, Choice];
}

/**
 * A question is a function of a car.
 *
 * @throws Refusal with the reason why this car cannot be asked about
 */
export type Draw = (car: Car, tell: Tell) => Draft;

/** Whether a question is the first of a misconception or its twin: the same idea, other numbers. */
export type Form = "first" | "twin";

/** A wrong idea that many hold, and two questions that find it. */
export interface Misconception extends Readonly<Record<Form, Draw>> {
  readonly idea: IdeaName;
  /** The chapter that teaches better; its reader may be asked from the next chapter on. */
  readonly chapter: string;
}

import { type IdeaName, ideaNames } from "./ideas.js";
import { misconceptions } from "./misconceptions.js";
import type { QuestionForm } from "./question.js";

/** Where an answer was given. */
export type Occasion = "before" | "after" | "single" | "review" | "warm-up";

const occasions: readonly Occasion[] = ["before", "after", "single", "review", "warm-up"];

/** One answer, as it is kept: the only thing the page remembers. */
export interface Given {
  /** The misconception that was asked for. */
  readonly asked: IdeaName;
  readonly form: QuestionForm;
  readonly occasion: Occasion;
  /** The day, counted from 1 January 1970. */
  readonly day: number;
  /** 0 a guess, 1 fairly sure, 2 certain. */
  readonly confidence: number;
  /** The wrong idea behind the answer; left out for a right one. */
  readonly idea?: IdeaName;
}

export const isRight = ({ idea }: Given): boolean => idea === undefined;

const lastDay = 100_000; // some time in the year 2243
const isIdea = (value: unknown): value is IdeaName => ideaNames.some((name) => name === value);
const isAsked = (value: unknown): value is IdeaName =>
  misconceptions.some(({ idea }) => idea === value);
const isWhole = (value: unknown, most: number): value is number =>
  Number.isInteger(value) && (value as number) >= 0 && (value as number) <= most;

/** The answer that a value of unknown origin holds, if it holds one. */
export function asGiven(value: unknown): Given | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { asked, form, occasion, day, confidence, idea } = value as Partial<Given>;
  const whole =
    isAsked(asked) &&
    (form === "first" || form === "twin") &&
    occasions.some((one) => one === occasion) &&
    isWhole(day, lastDay) &&
    isWhole(confidence, 2) &&
    (idea === undefined || isIdea(idea));
  if (!whole) return undefined;
  const given = { asked, form, occasion: occasion as Occasion, day, confidence };
  return idea === undefined ? given : { ...given, idea };
}

import { type Given, isRight } from "./given.js";
import type { IdeaName } from "./ideas.js";
import { type Recall, recallAfter } from "./recall.js";

/** Where a question stands in its reviews. */
export interface Review extends Recall {
  readonly asked: IdeaName;
}

/**
 * The reviews that follow from all answers so far, those due first in front.
 *
 * A question comes in with its first answer that was explained; the check before the course explains
 * nothing.
 */
export function reviewsOf(answers: readonly Given[]): Review[] {
  const reviews = new Map<IdeaName, Review>();
  for (const given of answers) {
    const { asked, day, occasion } = given;
    if (occasion === "before") continue;
    const recall = recallAfter(reviews.get(asked), { day, isRight: isRight(given) });
    reviews.set(asked, { ...recall, asked });
  }
  return [...reviews.values()].sort((a, b) => (a.due ?? Infinity) - (b.due ?? Infinity));
}

/** Those whose day has come. */
export function dueOn(day: number, answers: readonly Given[]): Review[] {
  return reviewsOf(answers).filter(({ due }) => due !== undefined && due <= day);
}

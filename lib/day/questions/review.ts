import { type Given, isRight } from "./given.js";
import type { IdeaName } from "./ideas.js";

/** Days from one review to the next; longer each time it is right – after Latimier 2021. */
const intervals = [1, 3, 7, 21] as const;

/** Where a question stands in its reviews. */
export interface Review {
  readonly asked: IdeaName;
  /** How many reviews it has passed. */
  readonly passed: number;
  /** The day on which it is due; left out once it has passed them all. */
  readonly due?: number;
}

/**
 * The reviews that follow from all answers so far, those due first in front.
 *
 * A question comes in with its first answer that was explained; the check before the course explains
 * nothing. A right answer on its day or later takes it on, a wrong one starts it over, a right one
 * before its day changes nothing.
 */
export function reviewsOf(answers: readonly Given[]): Review[] {
  const reviews = new Map<IdeaName, Review>();
  for (const given of answers) {
    if (given.occasion === "before") continue;
    reviews.set(given.asked, next(reviews.get(given.asked), given));
  }
  return [...reviews.values()].sort((a, b) => (a.due ?? Infinity) - (b.due ?? Infinity));
}

function next(review: Review | undefined, given: Given): Review {
  const { asked, day } = given;
  if (review === undefined || !isRight(given)) return { asked, passed: 0, due: day + intervals[0] };
  if (review.due === undefined || day < review.due) return review;
  const passed = review.passed + 1;
  const wait = intervals[passed];
  return wait === undefined ? { asked, passed } : { asked, passed, due: day + wait };
}

/** Those whose day has come. */
export function dueOn(day: number, answers: readonly Given[]): Review[] {
  return reviewsOf(answers).filter(({ due }) => due !== undefined && due <= day);
}

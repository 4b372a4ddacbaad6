import { answeredTo } from "./exercises.js";
import { predictionOf, seenAfter } from "./predictions.js";
import { isDue } from "./times.js";

/** What there is to do in a chapter, by name, and where the page says so. */
export interface ChapterWork {
  readonly place: HTMLElement;
  readonly chapter: string;
  readonly predictions: readonly string[];
  /** Predictions after which something is to be done in a figure. */
  readonly looks: readonly string[];
  readonly exercises: readonly string[];
}

const listed = (text: string | undefined): string[] =>
  (text ?? "").split(" ").filter((id) => id !== "");

/** The work of all chapters as the build wrote it into this page. */
export const chapterWork = (): ChapterWork[] =>
  [...document.querySelectorAll<HTMLElement>("[data-chapter]")].map((place) => ({
    place,
    chapter: place.dataset.chapter ?? "",
    predictions: listed(place.dataset.predictions),
    looks: listed(place.dataset.looks),
    exercises: listed(place.dataset.exercises),
  }));

/** How much of a chapter is done. */
export function doneOf({ chapter, predictions, looks, exercises }: ChapterWork) {
  return {
    filed: predictions.filter((id) => predictionOf(id, chapter).now.value !== undefined).length,
    seen: looks.filter((id) => seenAfter(id, chapter).now.value.saw !== "").length,
    solved: exercises.filter(
      (id) => answeredTo(id, chapter).now.value.times.at(-1)?.isRight === true,
    ).length,
  };
}

/** A place of a chapter that is to be done again. */
export interface DuePlace {
  readonly chapter: string;
  readonly id: string;
}

/** What of the chapters is due on a day: predictions to recall, exercises to solve. */
export function dueWork(work: readonly ChapterWork[], day: number) {
  const all = (of: (one: ChapterWork) => readonly string[]): DuePlace[] =>
    work.flatMap((one) => of(one).map((id) => ({ chapter: one.chapter, id })));
  return {
    predictions: all(({ looks }) => looks).filter(
      ({ id, chapter }) =>
        predictionOf(id, chapter).now.value?.inWords !== undefined &&
        isDue(seenAfter(id, chapter).now.value.times, day),
    ),
    exercises: all(({ exercises }) => exercises).filter(({ id, chapter }) =>
      isDue(answeredTo(id, chapter).now.value.times, day),
    ),
  };
}

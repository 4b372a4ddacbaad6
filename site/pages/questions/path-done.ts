import { answeredTo, predictionOf, seenAfter } from "@rollbook/page";
import { mergedPlace, type PlaceDone } from "../../store/path-file.js";
import { work } from "./work.js";

const doneAt = (chapter: string, id: string): PlaceDone => {
  const filed = predictionOf(id, chapter).now.value;
  const seen = seenAfter(id, chapter).now.value;
  const answered = answeredTo(id, chapter).now.value;
  return {
    ...{ chapter, id },
    ...(filed && { filed }),
    ...(seen.looked.length + seen.times.length > 0 && { seen }),
    ...(answered.times.length > 0 && { answered }),
  };
};

const isDone = ({ filed, seen, answered }: PlaceDone): boolean =>
  filed !== undefined || seen !== undefined || answered !== undefined;

/** What was predicted, seen and solved in all chapters, on this device. */
export const pathDone = (): PlaceDone[] =>
  work
    .flatMap(({ chapter, predictions, exercises }) =>
      [...predictions, ...exercises].map((id) => doneAt(chapter, id)),
    )
    .filter(isDone);

const isKnown = ({ chapter, id }: PlaceDone): boolean =>
  work.some(
    (one) => one.chapter === chapter && [...one.predictions, ...one.exercises].includes(id),
  );

async function keepPlace(other: PlaceDone): Promise<boolean> {
  const { chapter, id } = other;
  const { filed, seen, answered } = mergedPlace(doneAt(chapter, id), other);
  const kept = [
    filed && predictionOf(id, chapter).set(filed),
    seen && seenAfter(id, chapter).set(seen),
    answered && answeredTo(id, chapter).set(answered),
  ];
  return (await Promise.all(kept)).every((one) => one !== false);
}

/** Adds what another device did; answers at how many places of this course, and whether all of it is kept. */
export async function addPath(
  places: readonly PlaceDone[],
): Promise<{ count: number; isKept: boolean }> {
  const known = places.filter(isKnown).filter(isDone);
  const kept = await Promise.all(known.map(keepPlace));
  return { count: known.length, isKept: kept.every(Boolean) };
}

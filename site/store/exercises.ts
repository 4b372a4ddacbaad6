import { perPlace } from "./per-place.js";
import { isTime, type Time } from "./times.js";

/** What the reader has answered to an exercise. */
export interface Answered {
  /** As it was asked last, in words. */
  readonly ask: string;
  readonly times: readonly Time[];
}

const mostTimes = 100;

function asAnswered(kept: unknown): Answered | undefined {
  const { ask, times } = (kept ?? {}) as Partial<Answered>;
  if (typeof ask !== "string" || !Array.isArray(times)) return undefined;
  return { ask, times: times.filter(isTime).slice(-mostTimes) };
}

/** What the reader has answered to an exercise of a page. */
export const answeredTo = perPlace<Answered>("exercise", {
  empty: { ask: "", times: [] },
  read: asAnswered,
});

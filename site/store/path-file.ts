import type { Time } from "./times.js";
import {
  type Answered,
  asAnswered,
  asFiled,
  asSeen,
  type Filed,
  type Seen,
} from "./work-values.js";

/** What a file of this kind says it is. */
const kind = "rollbook path";
const version = 1;
const mostCharacters = 2_000_000;

/** What was done at one place of a chapter: a prediction with what was seen after it, or an exercise. */
export interface PlaceDone {
  readonly chapter: string;
  readonly id: string;
  readonly filed?: Filed;
  readonly seen?: Seen;
  readonly answered?: Answered;
}

/** Why a file gives no path. */
export type PathFileFault = "too-large" | "not-a-path" | "other-version";

/** What was done, as the text of a file. */
export const pathToFile = (places: readonly PlaceDone[]): string =>
  `${JSON.stringify({ kind, version, places }, null, 1)}\n`;

function asPlace(value: unknown): PlaceDone | undefined {
  const { chapter, id, filed, seen, answered } = (value ?? {}) as Partial<PlaceDone>;
  if (typeof chapter !== "string" || typeof id !== "string") return undefined;
  const sound = { filed: asFiled(filed), seen: asSeen(seen), answered: asAnswered(answered) };
  return {
    ...{ chapter, id },
    ...(sound.filed && { filed: sound.filed }),
    ...(sound.seen && { seen: sound.seen }),
    ...(sound.answered && { answered: sound.answered }),
  };
}

function parsed(text: string): { kind?: unknown; version?: unknown; places?: unknown } {
  try {
    return JSON.parse(text) ?? {};
  } catch {
    return {};
  }
}

/** What was done, from the text of a file, or why there is nothing. */
export function pathFromFile(text: string): { places: PlaceDone[] } | { fault: PathFileFault } {
  if (text.length > mostCharacters) return { fault: "too-large" };
  const content = parsed(text);
  if (content.kind !== kind || !Array.isArray(content.places)) return { fault: "not-a-path" };
  if (content.version !== version) return { fault: "other-version" };
  return { places: content.places.flatMap((one) => asPlace(one) ?? []) };
}

function timesOf(mine: readonly Time[], others: readonly Time[]): Time[] {
  const all = new Map([...mine, ...others].map((time) => [`${time.day} ${time.isRight}`, time]));
  return [...all.values()].sort((a, b) => a.day - b.day);
}

/** Two devices' work at one place as one: what was written here stays, what is missing here comes in. */
export function mergedPlace(mine: PlaceDone, other: PlaceDone): PlaceDone {
  const filed = mine.filed ?? other.filed;
  const seen =
    mine.seen && other.seen ? mergedSeen(mine.seen, other.seen) : (mine.seen ?? other.seen);
  const answered =
    mine.answered && other.answered
      ? {
          ask: mine.answered.ask || other.answered.ask,
          times: timesOf(mine.answered.times, other.answered.times),
        }
      : (mine.answered ?? other.answered);
  return {
    ...{ chapter: mine.chapter, id: mine.id },
    ...(filed && { filed }),
    ...(seen && { seen }),
    ...(answered && { answered }),
  };
}

const mergedSeen = (mine: Seen, other: Seen): Seen => ({
  looked: [...new Set([...mine.looked, ...other.looked])].sort((a, b) => a - b),
  saw: mine.saw || other.saw,
  times: timesOf(mine.times, other.times),
});

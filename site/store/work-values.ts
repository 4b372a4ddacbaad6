import { isTime, type Time } from "./times.js";

/** What was asked and what the model answered, in words, as they stood when it was filed: for a later review. */
export interface InWords {
  readonly ask: string;
  readonly said: string;
  readonly model: string;
}

/** A prediction that the reader has filed. */
export interface Filed {
  readonly choice: number;
  readonly confidence: string;
  readonly reason: string;
  readonly inWords?: InWords;
  /** What was drawn, SI. */
  readonly drawn?: number;
}

/** What was done in a figure after a prediction, and what the reader saw there. */
export interface Seen {
  /** Which of the things to do are done, by place. */
  readonly looked: readonly number[];
  /** In the reader's words; empty before they are filed. */
  readonly saw: string;
  /** When it was explained, and when it was recalled since. */
  readonly times: readonly Time[];
}

/** What the reader has answered to an exercise. */
export interface Answered {
  /** As it was asked last, in words. */
  readonly ask: string;
  readonly times: readonly Time[];
}

const mostTimes = 100;

const isText = (value: unknown): value is string => typeof value === "string";

function asInWords(kept: unknown): InWords | undefined {
  const { ask, said, model } = (kept ?? {}) as Partial<InWords>;
  return isText(ask) && isText(said) && isText(model) ? { ask, said, model } : undefined;
}

export function asFiled(kept: unknown): Filed | undefined {
  const { choice, confidence, reason, inWords, drawn } = (kept ?? {}) as Partial<Filed>;
  if (!isText(confidence) || !isText(reason) || !Number.isInteger(choice)) return undefined;
  const asked = asInWords(inWords);
  return {
    ...{ choice: choice as number, confidence, reason },
    ...(asked && { inWords: asked }),
    ...(Number.isFinite(drawn) && { drawn: drawn as number }),
  };
}

export function asSeen(kept: unknown): Seen | undefined {
  const { looked, saw, times } = (kept ?? {}) as Partial<Seen>;
  if (!Array.isArray(looked) || !isText(saw) || !Array.isArray(times)) return undefined;
  return { looked: looked.filter(Number.isInteger), saw, times: times.filter(isTime) };
}

export function asAnswered(kept: unknown): Answered | undefined {
  const { ask, times } = (kept ?? {}) as Partial<Answered>;
  if (typeof ask !== "string" || !Array.isArray(times)) return undefined;
  return { ask, times: times.filter(isTime).slice(-mostTimes) };
}

import { type Document, documentOf } from "./document.js";

/** A prediction that the reader has filed. */
export interface Filed {
  readonly choice: number;
  readonly confidence: string;
  readonly reason: string;
}

function asFiled(kept: unknown): Filed | undefined {
  const { choice, confidence, reason } = (kept ?? {}) as Partial<Filed>;
  const whole = typeof confidence === "string" && typeof reason === "string";
  return whole && Number.isInteger(choice)
    ? { choice: choice as number, confidence, reason }
    : undefined;
}

const asked = new Map<string, Document<Filed | undefined>>();

/** What the reader has filed under a question of this page, if anything. */
export function predictionOf(id: string): Document<Filed | undefined> {
  const key = `filed:${document.documentElement.dataset.page}:${id}`;
  const known = asked.get(key) ?? documentOf({ key, empty: undefined, read: asFiled });
  asked.set(key, known);
  return known;
}

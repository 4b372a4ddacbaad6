import { type Document, documentOf, type Shape } from "./document.js";

/** A prediction that the reader has filed. */
export interface Filed {
  readonly choice: number;
  readonly confidence: string;
  readonly reason: string;
}

/** What was done in a figure after a prediction, and what the reader saw there. */
export interface Seen {
  /** Which of the things to do are done, by place. */
  readonly looked: readonly number[];
  /** In the reader's words; empty before they are filed. */
  readonly saw: string;
}

const pageName = (): string => document.documentElement.dataset.page ?? "";

/** What is kept under the name of a place in a page, one document for each. */
function perPlace<Value>(kind: string, shape: Omit<Shape<Value>, "key">) {
  const asked = new Map<string, Document<Value>>();
  return (id: string, page = pageName()): Document<Value> => {
    const key = `${kind}:${page}:${id}`;
    const known = asked.get(key) ?? documentOf({ key, ...shape });
    asked.set(key, known);
    return known;
  };
}

function asFiled(kept: unknown): Filed | undefined {
  const { choice, confidence, reason } = (kept ?? {}) as Partial<Filed>;
  const whole = typeof confidence === "string" && typeof reason === "string";
  return whole && Number.isInteger(choice)
    ? { choice: choice as number, confidence, reason }
    : undefined;
}

function asSeen(kept: unknown): Seen | undefined {
  const { looked, saw } = (kept ?? {}) as Partial<Seen>;
  if (!Array.isArray(looked) || typeof saw !== "string") return undefined;
  return { looked: looked.filter(Number.isInteger), saw };
}

/** What the reader has filed under a question of a page, if anything. */
export const predictionOf = perPlace<Filed | undefined>("filed", {
  empty: undefined,
  read: asFiled,
});

const nothingSeen: Seen = { looked: [], saw: "" };

/** What the reader did and saw in the figure that a question opens. */
export const seenAfter = perPlace<Seen>("seen", { empty: nothingSeen, read: asSeen });

const inAHurry = perPlace<boolean>("open", {
  empty: false,
  read: (kept) => (typeof kept === "boolean" ? kept : undefined),
});

/** Whether the reader wants everything of a page open, unasked. */
export const openUnasked = (page = pageName()): Document<boolean> => inAHurry("all", page);

import type { Document } from "./document.js";
import { pageName, perPlace } from "./per-place.js";
import { asFiled, asSeen, type Filed, type InWords, type Seen } from "./work-values.js";

export type { Filed, InWords, Seen };

/** What the reader has filed under a question of a page, if anything. */
export const predictionOf = perPlace<Filed | undefined>("filed", {
  empty: undefined,
  read: asFiled,
});

/** What the reader did and saw in the figure that a question opens. */
export const seenAfter = perPlace<Seen>("seen", {
  empty: { looked: [], saw: "", times: [] },
  read: asSeen,
});

const openAtOnce = perPlace<boolean>("open", {
  empty: false,
  read: (kept) => (typeof kept === "boolean" ? kept : undefined),
});

/** Whether the reader wants everything of a page open, unasked. */
export const openUnasked = (page = pageName()): Document<boolean> => openAtOnce("all", page);

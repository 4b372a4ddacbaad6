import { perPlace } from "./per-place.js";
import { type Answered, asAnswered } from "./work-values.js";

/** What the reader has answered to an exercise of a page. */
export const answeredTo = perPlace<Answered>("exercise", {
  empty: { ask: "", times: [] },
  read: asAnswered,
});

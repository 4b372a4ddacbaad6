/** What a cell may call that is the same in the kernel, in the page and wherever else cells run. */

export { fromShown } from "../say/units.js";
export { span, upTo } from "./domain.js";
export { area, arrow, curve, dot, label, line, type Mark, type Point, type Tone } from "./marks.js";
export { currentCar, format } from "./reader.js";
export { changeLabel, movedInWords, pollAdviceInWords, warningInWords } from "./say.js";
export { axleAt, axleSeenThrough, seenView } from "./see-through.js";
export { from, isLeast, isMost } from "./spec.js";

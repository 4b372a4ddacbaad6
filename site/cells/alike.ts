/** What a cell may call that is the same in the kernel, in the page and wherever else cells run. */

export { fromShown } from "../say/units.js";
export { span, upTo } from "./domain.js";
export { aboveView, carFromAbove, fromAbove, outlineAbove } from "./living/above.js";
export { axleSeenThrough, seenClose, seenView } from "./living/axle.js";
export { hubOf, leanOf as onBody, roofOf } from "./living/pose.js";
export { pressedTyre, pressedView, tyrePressed } from "./living/pressed.js";
export { axleAt, axleInTurn, carInTurn, type SeenAxle } from "./living/seen-axle.js";
export { carFromSide, fromSide, sideView } from "./living/side.js";
export { allRoundView, carSeenFrom, type Standpoint, standpoints } from "./living/sides.js";
export { area, arrow, curve, dot, label, line, type Mark, type Point, type Tone } from "./marks.js";
export { currentCar, format } from "./reader.js";
export { changeLabel, movedInWords, pollAdviceInWords, warningInWords } from "./say.js";
export { from, isLeast, isMost } from "./spec.js";

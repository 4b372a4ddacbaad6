/** What a notebook cell may call besides the physics; this is how the kernel does it. */

export { span, upTo } from "./domain.js";
export { area, arrow, curve, dot, label, line, type Mark, type Point, type Tone } from "./marks.js";
export { figure } from "./node/figure.js";
export { exercise, predict } from "./node/question.js";
export { worked } from "./node/worked.js";
export { currentCar, format } from "./reader.js";
export { from } from "./spec.js";

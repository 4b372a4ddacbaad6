/** What a notebook cell may call besides the physics; this is how the kernel does it. */

export * from "./alike.js";
export { workFor } from "./made-for.js";
export { figure } from "./node/figure.js";
export { exercise, predict } from "./node/question.js";
export { worked } from "./node/worked.js";

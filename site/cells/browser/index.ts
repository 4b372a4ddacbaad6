/** The twin of ../index.ts for the page: the same calls find what the kernel left and bring it to life. */

export * from "../alike.js";
export { exercise } from "./exercise.js";
export { figure } from "./figure.js";
export { predict } from "./predict.js";
export { worked } from "./worked.js";

/** The twin of ../index.ts for the page: the same calls find what the kernel left and bring it to life. */

export { span, upTo } from "../domain.js";
export {
  area,
  arrow,
  curve,
  dot,
  label,
  line,
  type Mark,
  type Point,
  type Tone,
} from "../marks.js";
export { currentCar, format } from "../reader.js";
export { from } from "../spec.js";
export { exercise } from "./exercise.js";
export { figure } from "./figure.js";
export { predict } from "./predict.js";
export { worked } from "./worked.js";

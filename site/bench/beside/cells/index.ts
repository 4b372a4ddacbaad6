/** The cell helpers as an author writes them for the other tool: each returns an element to display. */

export { span, upTo } from "../../../cells/domain.js";
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
} from "../../../cells/marks.js";
export { currentCar, format } from "../../../cells/reader.js";
export { from } from "../../../cells/spec.js";
export { figure } from "./figure.js";
export { exercise, predict, worked } from "./texts.js";

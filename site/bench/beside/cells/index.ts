/** The cell helpers as an author writes them for the other tool: each returns an element to display. */

export * from "../../../cells/alike.js";
export { figure } from "./figure.js";
export { exercise, predict, worked } from "./texts.js";

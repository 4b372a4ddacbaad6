import { openUnasked } from "../../store/predictions.js";
import { words } from "../words.js";
import { element } from "./element.js";

/** A way past all questions of a page, for a reader who has no time to predict. */
export function hurryButton(): HTMLElement {
  const button = element("button", { type: "button", class: "plain" }, words.openUnasked);
  button.addEventListener("click", () => void openUnasked().set(true));
  return button;
}

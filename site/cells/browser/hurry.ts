import { openUnasked } from "../../store/predictions.js";
import { words } from "../words.js";
import { element } from "./element.js";

/** A way past all questions of a page, for a reader who has no time to predict; `taken` is called when it was, since the button is then gone. */
export function hurryButton(taken: () => void): HTMLElement {
  const button = element("button", { type: "button", class: "plain" }, words.openUnasked);
  button.addEventListener("click", () => {
    void openUnasked().set(true);
    taken();
  });
  return button;
}

import { frontEndWords as words } from "../../front-end-words.js";
import { element } from "../element.js";

/** Folds the cell above a question where the front end shows it in spite of the cell's own wish: the classic notebook. */
export function foldSource(output: Element): void {
  const source = output.closest(".code_cell")?.querySelector<HTMLElement>(":scope > .input");
  if (!source || source.dataset.folded !== undefined) return;
  source.dataset.folded = "";
  const button = element("button", { type: "button" });
  const show = (isHidden: boolean) => {
    source.style.display = isHidden ? "none" : "";
    button.textContent = isHidden ? words.showCell : words.hideCell;
  };
  button.addEventListener("click", () => show(source.style.display === ""));
  show(true);
  source.before(button);
}

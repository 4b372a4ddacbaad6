import { element } from "@rollbook/page";
import { words } from "../words.js";
import { type Editor, editor } from "./editor.js";

/** A cell on the page: its editor, and below it what came of it. */
export interface CellView {
  readonly id: string;
  readonly written: string;
  readonly editor: Editor;
  readonly results: HTMLElement;
  isEdited(): boolean;
  /** Says what is wrong with the cell; without a sentence, that nothing is. */
  tell(sentence?: string, line?: number): void;
}

/** Puts an editor in place of a listed cell. */
export function cellView(heading: HTMLElement, changed: () => void, run: () => void): CellView {
  const listed = heading.nextElementSibling as HTMLElement;
  const id = heading.id;
  const written = listed.textContent ?? "";
  const mark = element("span", { class: "edited", hidden: true }, words.edited);
  const reset = element("button", { type: "button", hidden: true }, words.reset);
  reset.setAttribute("aria-label", words.resetCell(id));
  const fault = element("p", { class: "fault", hidden: true });
  const results = element("div", { class: "results" });
  const own: Editor = editor({ label: words.cell(id), text: written, changed: settle, run });
  const isEdited = () => own.text() !== written;

  function settle(): void {
    mark.hidden = reset.hidden = !isEdited();
    changed();
  }
  reset.addEventListener("click", () => {
    own.replace(written);
    own.focus();
  });
  heading.append(" ", mark);
  listed.replaceWith(own.host, reset, fault, results);
  return {
    id,
    written,
    editor: own,
    results,
    isEdited,
    tell(sentence = "", line) {
      fault.textContent = sentence;
      fault.hidden = sentence === "";
      own.mark(line, sentence);
    },
  };
}

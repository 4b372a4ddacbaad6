import { element } from "@rollbook/page";
import { words } from "../words.js";
import { button } from "./parts.js";

/** One line that says what was done, with a way back where there is one. */
export interface Notice {
  readonly whole: HTMLElement;
  tell(text: string, back?: () => void): void;
}

export function notice(): Notice {
  const status = element("p", { class: "status", role: "status" });
  let back: (() => void) | undefined;
  const undo = button(
    words.undo,
    () => {
      const undone = back;
      tell("");
      undone?.();
    },
    { hidden: true },
  );
  function tell(text: string, way?: () => void): void {
    status.textContent = text;
    back = way;
    undo.hidden = way === undefined;
    if (way) undo.focus();
  }
  return { whole: element("div", { class: "told" }, status, undo), tell };
}

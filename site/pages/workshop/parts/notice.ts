import { element } from "@rollbook/page";

/** One line, for eye and ear, on what was just done. */
export const notice = element("p", { role: "status", class: "notice" });

/** Says a sentence; with an undo it offers to take it back. */
export function say(sentence: string, undo?: { label: string; work: () => void }): void {
  notice.replaceChildren(sentence);
  if (undo === undefined) return;
  const back = element("button", { type: "button", id: "undo" }, undo.label);
  back.addEventListener("click", () => {
    notice.replaceChildren();
    undo.work();
  });
  notice.append(" ", back);
}

import { element } from "@rollbook/page";
import { words } from "../../say/front.js";

/** The first question: an answer is wanted before anything is moved, and the picture then gives it. */
export function askFirst(): void {
  const place = document.getElementById("first-question");
  if (!place) return;
  const said = element("p", { class: "outcome", role: "status" });
  const buttons = Object.values(words.choose).map((text) => {
    const button = element("button", { type: "button", "aria-pressed": "false" }, text);
    button.addEventListener("click", () => {
      for (const other of buttons) other.setAttribute("aria-pressed", String(other === button));
      said.textContent = words.chosen(text);
    });
    return button;
  });
  place.after(element("p", { class: "choosing" }, ...buttons), said);
}

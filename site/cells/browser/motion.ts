import { effect } from "@preact/signals-core";
import { documentOf } from "../../store/document.js";
import { words } from "../words.js";
import { element } from "./element.js";

/** Whether the reader stopped all motion on every page. */
export const stillness = documentOf<boolean>({
  key: "still",
  empty: false,
  read: (value) => (typeof value === "boolean" ? value : undefined),
});

/** Whether nothing may move by itself: the reader said so here, or to the device. */
export const isStill = (): boolean =>
  stillness.now.value || matchMedia("(prefers-reduced-motion: reduce)").matches;

/** A button at the foot of every page that stops all motion, or lets it be again. */
export function signMotion(): void {
  const button = element("button", { type: "button", id: "motion" });
  effect(() => {
    button.textContent = stillness.now.value ? words.letMove : words.stopMotion;
    button.setAttribute("aria-pressed", String(stillness.now.value));
  });
  button.addEventListener("click", () => void stillness.set(!stillness.now.value));
  document.querySelector(".colophon")?.append(element("p", { class: "motion" }, button));
}

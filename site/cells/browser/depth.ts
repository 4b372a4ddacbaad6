import { effect } from "@preact/signals-core";
import { documentOf } from "../../store/document.js";
import { words } from "../words.js";
import { element } from "./element.js";

const coreOnly = documentOf<boolean>({
  key: "core-only",
  empty: false,
  read: (kept) => (typeof kept === "boolean" ? kept : undefined),
});

/** Opens the part that the address leads to, also where only the core is shown. */
function openTarget(): void {
  const target = document.getElementById(location.hash.slice(1)); // ids are plain
  target?.closest("[data-deeper]")?.setAttribute("data-wanted", "");
}

/** A switch at the head of a chapter: its core alone, or all of it. What is folded opens by its heading. */
export function offerCoreOnly(): void {
  const place = document.getElementById("depth");
  const article = document.querySelector("article");
  if (!place || !article) return;
  const button = element("button", { type: "button" });
  button.addEventListener("click", () => void coreOnly.set(!coreOnly.now.value));
  for (const part of document.querySelectorAll(".part[data-deeper]")) {
    const open = element("button", { type: "button", class: "open-part" }, words.openPart);
    open.addEventListener("click", () => part.setAttribute("data-wanted", ""));
    part.querySelector(".depth")?.append(" ", open);
  }
  place.append(" ", button);
  effect(() => {
    article.toggleAttribute("data-core-only", coreOnly.now.value);
    button.textContent = coreOnly.now.value ? words.showAll : words.showCore;
  });
  addEventListener("hashchange", openTarget);
  openTarget();
}

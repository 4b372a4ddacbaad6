import { element } from "@rollbook/page";
import { refill } from "../parts/refill.js";
import { words } from "../words.js";

export function runView(section: HTMLElement): () => void {
  return () => refill(section, element("h2", { tabindex: -1 }, words.views.run));
}

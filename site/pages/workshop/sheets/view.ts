import { element } from "@rollbook/page";
import { refill } from "../parts/refill.js";
import { words } from "../words.js";

export function sheetsView(section: HTMLElement): () => void {
  return () => refill(section, element("h2", { tabindex: -1 }, words.views.sheets));
}

import { element } from "@rollbook/page";
import type { Draft } from "../day/draft.js";
import { words } from "../words.js";
import { paper } from "./paper.js";

/** Four letters, one on each quarter of the page. */
export function letterCards(day: Draft): HTMLElement[] {
  const quarters = words.run.letters.map((letter) => element("div", {}, letter));
  const help = element("p", {}, words.sheets.lettersHelp);
  const page = paper(
    day,
    words.sheets.kinds.letters,
    help,
    element("div", { class: "letters-a-d" }, ...quarters),
  );
  return [page];
}

import type { SheetRow } from "@rollbook/lib";
import { element, reader } from "@rollbook/page";
import { tippingOf } from "../day/beware.js";
import type { Draft } from "../day/draft.js";
import { toDoInWords, undoInWords } from "../day/row-words.js";
import { listOf } from "../parts/fields.js";
import { words } from "../words.js";
import { blank, paper } from "./paper.js";
import { safetyLines } from "./safety-lines.js";

const { sheets: said } = words;

/** One card for each time that hands go to the car. */
export function changeCards(day: Draft, rows: readonly SheetRow[]): HTMLElement[] {
  const cards = rows.flatMap((row, i) =>
    row.toDo.length === 0 ? [] : [card(day, row, rows[i - 1])],
  );
  return cards.length === 0 ? [] : [paper(day, said.kinds.cards, ...cards)];
}

function card(day: Draft, row: SheetRow, before: SheetRow | undefined): HTMLElement {
  const title = row.step.kind === "return" ? said.backTitle(row.run) : said.cardTitle(row.run);
  return element(
    "section",
    { class: "card" },
    element("h4", {}, title),
    element("p", {}, element("b", {}, said.doThis)),
    listOf(toDoInWords(row, before?.car ?? day.car, reader), "to-do"),
    element("p", {}, said.takes(row.minutes.change)),
    safetyBox(day, row),
    element("p", {}, element("b", {}, said.undo)),
    listOf(undoInWords(row, reader)),
    blank(said.responsible),
    blank(said.checkedBy),
  );
}

function safetyBox(day: Draft, row: SheetRow): HTMLElement {
  const lines = listOf([...tippingOf(row), ...safetyLines(day, row)]);
  return element("div", { class: "safety" }, element("h5", {}, said.safety), lines);
}

import type { SheetRow } from "@rollbook/lib";
import { element, reader } from "@rollbook/page";
import type { Draft } from "../day/draft.js";
import { theDay } from "../day/open-day.js";
import { worked } from "../day/worked.js";
import { chips } from "../parts/chips.js";
import { button } from "../parts/fields.js";
import { needsDay } from "../parts/needs-day.js";
import { say } from "../parts/notice.js";
import { refill } from "../parts/refill.js";
import { soon } from "../parts/soon.js";
import { type Wall, wall } from "../parts/wall.js";
import { words } from "../words.js";
import { answerKey } from "./answer-key.js";
import { changeCards } from "./change-cards.js";
import { handOut } from "./hand-out.js";
import { letterCards } from "./letters.js";
import { runSheet } from "./run-sheet.js";
import { predictionSlips, reportSlips } from "./slips.js";

const { sheets: said } = words;

type Kind = keyof typeof said.kinds;
type Maker = (day: Draft, rows: readonly SheetRow[]) => HTMLElement[];

const makers: Readonly<Record<Kind, Maker>> = {
  run: runSheet,
  cards: changeCards,
  predict: predictionSlips,
  report: reportSlips,
  letters: letterCards,
  handOut,
  key: answerKey,
};
const kinds = Object.keys(makers) as Kind[];
type Paper = keyof typeof said.papers;

/** Fills the sheets' section: what to print, on which paper, and the sheets themselves. */
export function sheetsView(section: HTMLElement): () => void {
  const chosen = new Set<Kind>(["run", "cards"]);
  let size: Paper = reader.units === "us" ? "letter" : "a4";
  const papers = element("div", { class: "papers", id: "papers" });
  const big = wall(words.sheets.wall, "open-sheet-wall");
  const later = soon();

  function lay(): void {
    papers.dataset.paper = size;
    later(() => {
      const day = theDay();
      const rows = (day && worked(day).rows) ?? [];
      const made = kinds
        .filter((kind) => chosen.has(kind))
        .flatMap((kind) => (day === undefined ? [] : makers[kind](day, rows)));
      refill(papers, ...(made.length > 0 ? made : [element("p", {}, said.nothing)]));
    });
  }

  function show(): void {
    chosen.delete("key"); // asked for anew each time
    const heading = element("h2", { tabindex: -1 }, words.views.sheets);
    const noRuns = theDay()?.steps.length === 0 ? words.run.noRuns : undefined;
    if (theDay() === undefined || noRuns !== undefined) {
      refill(section, heading, ...needsDay(noRuns));
      return;
    }
    const sizes = (Object.keys(said.papers) as Paper[]).map((value) => ({
      value,
      text: said.papers[value],
    }));
    const choice = element(
      "div",
      { class: "controls" },
      chips("paper", said.paper, sizes, size, (value) => {
        size = value;
        lay();
      }),
      kindChoice(chosen, lay),
      element(
        "p",
        { class: "tools" },
        button("print-sheets", said.print, () => print(), { class: "large" }),
        button("open-sheet-wall", said.wall, () => onTheWall(big, papers)),
      ),
      element("p", { class: "quiet" }, said.screenHelp),
    );
    papers.replaceChildren(element("p", {}, said.working));
    refill(section, heading, choice, papers, big.place);
    lay();
  }
  return show;
}

function kindChoice(chosen: Set<Kind>, changed: () => void): HTMLElement {
  const boxes = kinds.map((kind) => {
    const box = element("input", {
      type: "checkbox",
      id: `sheet-${kind}`,
      checked: chosen.has(kind),
    });
    box.addEventListener("change", () => {
      if (box.checked) chosen.add(kind);
      else chosen.delete(kind);
      changed();
    });
    return element("label", { class: "check", for: `sheet-${kind}` }, box, said.kinds[kind]);
  });
  return element("fieldset", { class: "places" }, element("legend", {}, said.which), ...boxes);
}

/** The sheets one by one in large type; the answer key is not among them. */
function onTheWall(big: Wall, papers: HTMLElement): void {
  const sheets = [...papers.querySelectorAll<HTMLElement>(".paper:not(.secret)")];
  if (sheets.length === 0) {
    say(said.nothing);
    return;
  }
  let at = 0;
  const go = (by: number) => () => {
    at = (at + by + sheets.length) % sheets.length;
    draw();
  };
  const draw = () => {
    const copy = sheets[at]?.cloneNode(true) ?? "";
    const turn = element(
      "p",
      { class: "tools" },
      button("wall-before", said.sheetBefore, go(-1)),
      button("wall-next", said.nextSheet, go(1)),
    );
    refill(big.shown, turn, copy);
  };
  draw();
  big.open();
}

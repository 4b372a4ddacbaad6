import { element } from "@rollbook/page";
import type { Draft } from "../day/draft.js";
import { words } from "../words.js";

/** A sheet of paper with a title; what lies on it may go on over several pages. */
export function paper(day: Draft, title: string, ...content: HTMLElement[]): HTMLElement {
  return element(
    "article",
    { class: "paper" },
    element("h3", {}, title),
    ...content,
    element("footer", {}, words.sheets.footer(day.name, day.venue.name)),
  );
}

/** A sheet that nobody but the instructor may see. */
export function secret(sheet: HTMLElement): HTMLElement {
  sheet.classList.add("secret");
  return sheet;
}

/** A line to write on. */
export const blank = (label: string, kind = ""): HTMLElement =>
  element("p", { class: `blank ${kind}` }, element("span", {}, label));

/** Words to mark with a pen. */
export const toMark = (label: string, choices: readonly string[]): HTMLElement =>
  element(
    "p",
    { class: "to-mark" },
    element("b", {}, label),
    ...choices.map((choice) => element("span", {}, choice)),
  );

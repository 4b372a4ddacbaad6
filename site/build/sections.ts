import { parseHTML } from "linkedom";
import type { Chapter } from "./chapter.js";
import { withoutDrawings } from "./drawings.js";

/** A stretch of a chapter that a link can lead to: under a heading, or a figure. */
export interface Section {
  /** The anchor; empty for the opening of the chapter. */
  readonly id: string;
  readonly kind: "section" | "figure";
  readonly title: string;
  readonly text: string;
  /** The words set in bold: those that are explained here. */
  readonly bold: readonly string[];
}

/** What is folded away or not for reading. */
const unread = "template, details, script, style, .code, .katex-mathml";

const tidy = (text: string): string => text.replace(/\s+/g, " ").trim();

/** The text of an element as it would be read; a formula is "…", and blocks stand apart. */
function textOf(element: Element): string {
  const copy = element.cloneNode(true) as Element;
  for (const formula of copy.querySelectorAll(".katex")) formula.textContent = "…";
  for (const block of copy.querySelectorAll("p, li, td, th, figcaption, legend")) block.append(" ");
  return tidy(copy.textContent ?? "");
}

const boldIn = (element: Element): string[] => {
  const found = [...element.querySelectorAll("strong")];
  return found.map(({ textContent }) => tidy(textContent ?? ""));
};

/** Takes a figure out of its section, as a place of its own. */
function figureOf(figure: Element): Section {
  const caption = figure.querySelector("figcaption");
  const title = tidy(caption?.textContent ?? "");
  caption?.remove();
  figure.remove();
  return { id: figure.id, kind: "figure", title, text: textOf(figure), bold: [] };
}

/** A chapter as the places in it that a reader may look for. */
export function sectionsOf({ title, html }: Pick<Chapter, "title" | "html">): Section[] {
  const { document } = parseHTML(
    `<!doctype html><html><body>${withoutDrawings(html)}</body></html>`,
  );
  for (const part of document.querySelectorAll(unread)) part.remove();
  const open = { id: "", title, text: [] as string[], bold: [] as string[] };
  const sections = [open];
  const figures: Section[] = [];
  for (const element of document.body.children) {
    const here = sections.at(-1) ?? open;
    figures.push(...[...element.querySelectorAll("figure[id]")].map(figureOf));
    if (/^H[23]$/.test(element.tagName)) {
      sections.push({ id: element.id, title: tidy(element.textContent ?? ""), text: [], bold: [] });
    } else if (element.tagName !== "H1") {
      here.text.push(textOf(element));
      here.bold.push(...boldIn(element));
    }
  }
  const prose = sections.map(({ text, ...rest }) => ({
    ...rest,
    kind: "section" as const,
    text: tidy(text.join(" ")),
  }));
  return [...prose, ...figures];
}

import { words } from "../cells/words.js";
import type { Outputs } from "../kernel/run.js";
import { type Heading, render } from "./markdown.js";
import { type Cell, CourseError, type Notebook, placeIn } from "./notebook.js";

/** A chapter ready to be put into a page. */
export interface Chapter {
  readonly name: string;
  readonly number: string;
  readonly title: string;
  /** The one idea, from the paragraph under the title. */
  readonly idea: string;
  readonly sections: readonly Heading[];
  readonly html: string;
}

/** What a cell displayed, with a link to its code; a cell that shows nothing takes no room. */
function codeHtml(notebook: Notebook, cell: Cell, outputs: Outputs): string {
  const shown = outputs[cell.id] ?? [];
  if (shown.length === 0) return "";
  const link = `<a class="code" href="${codePage(notebook)}#${cell.id}">${words.code}</a>`;
  return `<div class="cell">${shown.join("\n")}${link}</div>`;
}

/** Whether a chapter draws the living car, whose parts its *Why* can then point at. */
const showsCar = ({ cells }: Notebook): boolean =>
  cells.some(({ kind, source }) => kind === "code" && /axleSeenThrough|carFromAbove/.test(source));

function proseHtml(notebook: Notebook, cell: Cell, headings: Heading[]): string {
  const here = headings.findLast(({ level }) => level === 2)?.text;
  const opens = /^## (.+)$/m.exec(cell.source)?.[1];
  const isWhy = (opens ?? here) === "Why" && showsCar(notebook);
  const html = render(cell.source, headings, isWhy);
  const [, fault] = /class="katex-error" title="([^"]*)"/.exec(html) ?? [];
  if (fault) throw new CourseError(`${placeIn(notebook, cell.id)}: ${fault}`);
  return html;
}

function ensureUniqueIds(name: string, html: string): void {
  const seen = new Set<string>();
  for (const [, id = ""] of html.matchAll(/\sid="([^"]+)"/g)) {
    if (seen.has(id)) throw new CourseError(`${name}.ipynb: two things have the id ${id}`);
    seen.add(id);
  }
}

function titleAndIdea({ name, cells }: Notebook): { title: string; idea: string } {
  const [, title, idea] = /^# (.+)\n+(.+)/.exec(cells[0]?.source ?? "") ?? [];
  if (!title || !idea) {
    throw new CourseError(
      `${name}.ipynb, cell 1: open with "# Title", then the one idea in a paragraph`,
    );
  }
  return { title, idea };
}

/** File name of the page that lists a chapter's cells. */
export const codePage = ({ name }: Pick<Notebook, "name">): string => `${name}.code.html`;

export function chapterOf(notebook: Notebook, outputs: Outputs): Chapter {
  const { name } = notebook;
  const headings: Heading[] = [];
  const html = notebook.cells
    .map((cell) =>
      cell.kind === "code"
        ? codeHtml(notebook, cell, outputs)
        : proseHtml(notebook, cell, headings),
    )
    .join("\n");
  ensureUniqueIds(name, html);
  const number = /^\d+/.exec(name)?.[0] ?? "";
  const sections = headings.filter(({ level }) => level === 2);
  return { name, number, ...titleAndIdea(notebook), sections, html };
}

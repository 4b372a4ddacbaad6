import { words } from "../cells/words.js";
import type { Outputs } from "../kernel/run.js";
import { glossary } from "./glossary.js";
import { render } from "./markdown.js";
import { type Cell, CourseError, type Notebook, placeIn } from "./notebook.js";
import { openTerms } from "./term-links.js";

/** A chapter ready to be put into a page. */
export interface Chapter {
  readonly name: string;
  readonly number: string;
  readonly title: string;
  /** The one idea, from the paragraph under the title. */
  readonly idea: string;
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

/** The heading under which each cell stands or which it opens. */
function headingsOf({ cells }: Notebook): Map<string, string> {
  let here = "";
  return new Map(
    cells.map(({ id, kind, source }) => {
      if (kind !== "code") here = [...source.matchAll(/^## (.+)$/gm)].at(-1)?.[1] ?? here;
      return [id, here];
    }),
  );
}

function proseHtml(notebook: Notebook, cell: Cell, extras: Parameters<typeof render>[1]): string {
  const html = render(cell.source, extras);
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
  const pointed = showsCar(notebook);
  const headings = headingsOf(notebook);
  const terms = openTerms(glossary());
  const html = notebook.cells
    .map((cell) =>
      cell.kind === "code"
        ? codeHtml(notebook, cell, outputs)
        : proseHtml(notebook, cell, {
            partWords: pointed && headings.get(cell.id) === "Why",
            terms,
          }),
    )
    .join("\n");
  ensureUniqueIds(name, html);
  const number = /^\d+/.exec(name)?.[0] ?? "";
  return { name, number, ...titleAndIdea(notebook), html };
}

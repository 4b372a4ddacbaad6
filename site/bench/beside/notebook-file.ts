import { render } from "../../build/markdown.js";
import { type Cell, CourseError, type Notebook } from "../../build/notebook.js";
import { escapeHtml } from "../../cells/escape.js";
import { wrapDisplays } from "./wrap-displays.js";

/** Text as it may stand in a cell of the file, which the tool indents by four. */
const inCell = (text: string): string =>
  text
    .replace(/<(?=\\*\/script[\s>])/gi, "<\\")
    .split("\n")
    .map((line) => (line.trim() === "" ? "" : `    ${line}`))
    .join("\n");

function cellTag({ kind, source }: Cell, index: number): string {
  const [type, text] =
    kind === "code"
      ? ["text/x-typescript", wrapDisplays(source)]
      : ["text/html", render(source).replaceAll("${", "&#36;{")];
  return `  <script id="${index + 1}" type="${type}">\n${inCell(text)}\n  </script>`;
}

/** A chapter as a notebook file of the other tool, its prose and formulas rendered beforehand. */
export function notebookFile({ name, cells }: Notebook): string {
  const [, title] = /^# (.+)/.exec(cells[0]?.source ?? "") ?? [];
  if (!title) throw new CourseError(`${name}.ipynb: no title`);
  const tags = cells.map(cellTag).join("\n");
  return `<!doctype html>\n<notebook theme="air">\n  <title>${escapeHtml(title)}</title>\n${tags}\n</notebook>\n`;
}

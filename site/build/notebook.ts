import { readFileSync } from "node:fs";
import { basename } from "node:path";

export interface Cell {
  readonly id: string;
  readonly kind: "code" | "markdown";
  readonly source: string;
}

/** A chapter as its author wrote it, without results. */
export interface Notebook {
  /** File name without its ending, such as "01-load-transfer". */
  readonly name: string;
  readonly cells: readonly Cell[];
}

/** A fault in the course, told with notebook, cell and line where they are known. */
export class CourseError extends Error {
  override readonly name = "CourseError";
}

/** Source text, in one piece or in lines, as the format allows both; nothing for anything else. */
function textOf(source: unknown): string | undefined {
  const lines: unknown[] = Array.isArray(source) ? source : [source ?? ""];
  return lines.every((line) => typeof line === "string") ? lines.join("") : undefined;
}

function cellOf(raw: unknown, index: number, name: string): Cell {
  const fault = (what: string) => new CourseError(`${name}, cell ${index + 1}: ${what}`);
  const { id, cell_type: kind, source } = (raw ?? {}) as Record<string, unknown>;
  if (kind !== "code" && kind !== "markdown") {
    throw fault(`cell type ${JSON.stringify(kind)} is not code or markdown`);
  }
  if (typeof id !== "string" || id === "") {
    throw fault("the cell has no id; save it as nbformat 4.5");
  }
  const text = textOf(source);
  if (text === undefined) throw fault("its source is not text");
  return { id, kind, source: text };
}

/** Reads a notebook's text; a broken one is refused with its name and what is wrong. */
export function parseNotebook(name: string, text: string): Notebook {
  let raw: { cells?: unknown; nbformat?: unknown };
  try {
    raw = JSON.parse(text);
  } catch (error) {
    throw new CourseError(`${name}: not a notebook, ${(error as Error).message}`);
  }
  if (raw?.nbformat !== 4 || !Array.isArray(raw.cells)) {
    throw new CourseError(`${name}: not a notebook of format 4 with a list of cells`);
  }
  const cells = raw.cells.map((cell, index) => cellOf(cell, index, name));
  const twice = cells.find((cell, index) => cells.findIndex(({ id }) => id === cell.id) !== index);
  if (twice) throw new CourseError(`${name}: two cells have the id ${twice.id}`);
  return { name, cells };
}

export function readNotebook(path: string): Notebook {
  return parseNotebook(basename(path, ".ipynb"), readFileSync(path, "utf8"));
}

export const codeCells = ({ cells }: Notebook): Cell[] =>
  cells.filter(({ kind }) => kind === "code");

/** "01-load-transfer, cell 5 (total), line 3" as an author counts them. */
export function placeIn(notebook: Notebook, cellId: string, line?: number): string {
  const index = notebook.cells.findIndex(({ id }) => id === cellId);
  const at = `${notebook.name}.ipynb, cell ${index + 1} (${cellId})`;
  return line === undefined ? at : `${at}, line ${line}`;
}

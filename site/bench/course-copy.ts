import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { readNotebooks } from "../build/build.js";
import { inRoot } from "../build/paths.js";

/** Where the benchmark keeps what it makes. */
export const home = inRoot(".cache/bench");

/** A course of its own with some of the chapters, at which a measure may change something. */
export function courseOf(name: string, wanted: (chapter: string) => boolean) {
  const course = `${home}/${name}`;
  rmSync(course, { recursive: true, force: true });
  mkdirSync(course, { recursive: true });
  for (const chapter of readNotebooks()
    .map(({ name }) => name)
    .filter(wanted))
    cpSync(inRoot(`notebooks/${chapter}.ipynb`), `${course}/${chapter}.ipynb`);
  return { course, out: `${course}/dist`, asked: ["--course", course] };
}

/** Adds a line to the last cell of a kind, as an author would who changes one. */
export function changeCell(file: string, kind: "code" | "markdown", line: string): void {
  const notebook = JSON.parse(readFileSync(file, "utf8"));
  const cell = notebook.cells.findLast(
    ({ cell_type }: { cell_type: string }) => cell_type === kind,
  );
  cell.source = `${[cell.source].flat().join("")}\n${line}`;
  writeFileSync(file, JSON.stringify(notebook, null, 1));
}

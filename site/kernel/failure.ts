import { type Cell, CourseError, type Notebook, placeIn } from "../build/notebook.js";
import type { CellResult } from "./tslab.js";

const words = (text: string): Set<string> => new Set(text.match(/[\w.]+/g) ?? []);

/** The line of the source that shares most words with a line of the JavaScript made from it. */
function closestLine(source: string, ranLine: string): number {
  const wanted = words(ranLine);
  const shared = source
    .split("\n")
    .map((line) => [...words(line)].filter((word) => wanted.has(word)).length);
  return shared.indexOf(Math.max(...shared)) + 1;
}

function failingLine(cell: Cell, { stderr, ran }: CellResult): number | undefined {
  const diagnostic = /^(\d+):\d+ - /m.exec(stderr);
  if (diagnostic) return Number(diagnostic[1]);
  const frame = /evalmachine\.<anonymous>:(\d+)/.exec(stderr);
  const ranLine = frame && ran.split("\n")[Number(frame[1]) - 1];
  return ranLine ? closestLine(cell.source, ranLine) : undefined;
}

/** The line that names the error, or the first that says anything. */
export function reason(stderr: string): string {
  const lines = stderr.split("\n").filter((line) => line.trim() !== "");
  const naming = lines.find((line) => /^\s*\w*(Error|Exception|Refusal): /.test(line));
  const line = naming ?? lines[0] ?? "the cell failed and said nothing";
  return line.replace(/^\d+:\d+ - /, "").trim();
}

/** Whether the library refused what the cell asked of it, as of a car that does not give it. */
export const isRefused = ({ stderr }: CellResult): boolean => /^\s*Refusal: /m.test(stderr);

export function cellFailure(notebook: Notebook, cell: Cell, result: CellResult): CourseError {
  const place = placeIn(notebook, cell.id, failingLine(cell, result));
  return new CourseError(`${place}: ${reason(result.stderr)}`);
}

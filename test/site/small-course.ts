import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { inRoot } from "../../site/build/paths.js";

type SmallCell = readonly [kind: "code" | "markdown", id: string, source: string];

/** The text of a notebook with these cells. */
export function notebookText(cells: readonly SmallCell[]): string {
  return JSON.stringify({
    nbformat: 4,
    nbformat_minor: 5,
    metadata: {},
    cells: cells.map(([cell_type, id, source]) => ({ cell_type, id, source, metadata: {} })),
  });
}

export const opening: SmallCell = ["markdown", "title", "# Small\n\nOne idea.\n"];

/** A folder of its own for a course of one notebook, below the repository so that imports resolve. */
export function smallCourse(name: string) {
  const base = inRoot(`.cache/test-${name}`);
  rmSync(base, { recursive: true, force: true });
  mkdirSync(`${base}/notebooks`, { recursive: true });
  return {
    options: { notebooks: `${base}/notebooks`, out: `${base}/dist`, joined: `${base}/joined` },
    write: (text: string) => writeFileSync(`${base}/notebooks/01-small.ipynb`, text),
    remove: () => rmSync(base, { recursive: true, force: true }),
  };
}

import { cpSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { readNotebooks } from "../../build/build.js";
import { inRoot } from "../../build/paths.js";
import { notebookFile } from "./notebook-file.js";
import { home, isCompared } from "./tool.js";

/** The compared chapters, and this course of them alone. */
export const ours = { notebooks: `${home}/notebooks`, out: `${home}/course` };

/** The other tool's folders, inside the one that its packages are installed in. */
export const theirs = { notebooks: `${home}/converted`, out: `${home}/site` };

/** Writes the compared chapters for both, and gives their names. */
export function writeChapters(): string[] {
  for (const { notebooks } of [ours, theirs]) {
    rmSync(notebooks, { recursive: true, force: true });
    mkdirSync(notebooks, { recursive: true });
  }
  const compared = readNotebooks().filter(({ name }) => isCompared(name));
  for (const notebook of compared) {
    const file = `${notebook.name}.ipynb`;
    cpSync(inRoot(`notebooks/${file}`), `${ours.notebooks}/${file}`);
    writeFileSync(`${theirs.notebooks}/${notebook.name}.html`, notebookFile(notebook));
  }
  return compared.map(({ name }) => name);
}

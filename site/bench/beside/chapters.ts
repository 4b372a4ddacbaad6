import { cpSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { readNotebooks } from "../../build/build.js";
import { inRoot } from "../../build/paths.js";
import { notebookFile } from "./notebook-file.js";
import { home, isCompared, notebookKit, vitepress } from "./tool.js";
import { config, pageFile } from "./vitepress/page-file.js";

/** The compared chapters, and this course of them alone. */
export const ours = { notebooks: `${home}/notebooks`, out: `${home}/course` };

/** The other tools' folders, inside those that their packages are installed in. */
export const kits = { notebooks: `${notebookKit.home}/converted`, out: `${notebookKit.home}/site` };
export const presses = {
  notebooks: `${vitepress.home}/converted`,
  out: `${vitepress.home}/converted/.vitepress/dist`,
};

/** Writes the compared chapters for all, and gives their names. */
export function writeChapters(): string[] {
  for (const { notebooks } of [ours, kits, presses]) {
    rmSync(notebooks, { recursive: true, force: true });
    mkdirSync(notebooks, { recursive: true });
  }
  const compared = readNotebooks().filter(({ name }) => isCompared(name));
  for (const notebook of compared) {
    const file = `${notebook.name}.ipynb`;
    cpSync(inRoot(`notebooks/${file}`), `${ours.notebooks}/${file}`);
    writeFileSync(`${kits.notebooks}/${notebook.name}.html`, notebookFile(notebook));
    writeFileSync(`${presses.notebooks}/${notebook.name}.md`, pageFile(notebook));
  }
  mkdirSync(`${presses.notebooks}/.vitepress`);
  writeFileSync(`${presses.notebooks}/.vitepress/config.ts`, config);
  return compared.map(({ name }) => name);
}

import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { inRoot } from "../../../../site/build/paths.js";
import { specFile, writeSpec } from "../../../../site/commands/jupyter/kernelspec.js";
import { debianPython } from "../../../../site/commands/needs.js";

interface RawCell {
  readonly id: string;
  readonly cell_type: string;
  readonly metadata: object;
  readonly source: string | readonly string[];
  readonly outputs?: readonly {
    readonly output_type: string;
    readonly data?: { "text/html"?: string | readonly string[] };
  }[];
}

/** Jupyter's folders for the tests alone. */
export const home = inRoot(".cache/jupyter");
export const environment = {
  ...process.env,
  HOME: home,
  JUPYTER_DATA_DIR: `${home}/data`,
  JUPYTER_CONFIG_DIR: `${home}/config`,
  JUPYTER_RUNTIME_DIR: `${home}/runtime`,
};
/** Notebooks with results, where a front end opens them. */
export const shelf = `${home}/notebooks`;

const textOf = (lines: string | readonly string[] = ""): string => [lines].flat().join("");

/** The cell of this id once more, run again at the end with another text. */
function again(cells: readonly RawCell[], id: string, edit: (source: string) => string): RawCell {
  const cell = cells.find((one) => one.id === id);
  if (!cell) throw new Error(`no cell ${id}`);
  return { ...cell, id: "edited", source: edit(textOf(cell.source)) };
}

/** A chapter as Jupyter's own client runs it over the wire, and then one cell edited and run again. */
export function executed(name: string, id: string, edit: (source: string) => string) {
  rmSync(home, { recursive: true, force: true });
  mkdirSync(shelf, { recursive: true });
  writeSpec(specFile(environment.JUPYTER_DATA_DIR));
  const path = `${shelf}/${name}.ipynb`;
  const notebook = JSON.parse(readFileSync(inRoot(`notebooks/${name}.ipynb`), "utf8"));
  const cells = [...notebook.cells, again(notebook.cells, id, edit)];
  writeFileSync(path, JSON.stringify({ ...notebook, cells }));
  const script = inRoot("test/site/browser/jupyter/run_notebook.py");
  const printed = execFileSync(debianPython, [script, path, inRoot("notebooks")], {
    ...{ env: environment, encoding: "utf8", maxBuffer: 64e6 },
    stdio: ["ignore", "pipe", "pipe"],
  });
  writeFileSync(path, printed);
  writeFileSync(`${shelf}/unsigned.ipynb`, printed.replace("# Start here", "# Unsigned"));
  return JSON.parse(printed).cells as readonly RawCell[];
}

/** What a cell displayed, as HTML. */
export const htmlOf = ({ outputs = [] }: RawCell): string[] =>
  outputs.map(({ data }) => textOf(data?.["text/html"]));

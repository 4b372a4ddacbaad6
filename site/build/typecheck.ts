import { execFile } from "node:child_process";
import { mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { cellAt, join } from "./join.js";
import { CourseError, type Notebook, placeIn } from "./notebook.js";
import { inRoot } from "./paths.js";

const settings = {
  extends: inRoot("tsconfig.base.json"),
  compilerOptions: {
    noEmit: true,
    lib: ["ES2022"],
    types: [],
    noUncheckedIndexedAccess: false,
    noUnusedLocals: false,
  },
  include: ["*.ts"],
};

/** Writes every chapter's joined module into the folder, leaving none of a removed chapter. */
export function writeJoined(notebooks: readonly Notebook[], folder: string): void {
  mkdirSync(folder, { recursive: true });
  for (const file of readdirSync(folder)) rmSync(`${folder}/${file}`);
  writeFileSync(`${folder}/tsconfig.json`, JSON.stringify(settings));
  for (const notebook of notebooks)
    writeFileSync(`${folder}/${notebook.name}.ts`, join(notebook).source);
}

function faultsIn(report: string, notebooks: readonly Notebook[]): string[] {
  return [...report.matchAll(/([\w-]+)\.ts\((\d+),\d+\): error TS\d+: (.*)/g)].map(
    ([whole, name, line, message]) => {
      const notebook = notebooks.find((candidate) => candidate.name === name);
      const at = notebook && cellAt(join(notebook), Number(line));
      return notebook && at ? `${placeIn(notebook, at.id, at.line)}: ${message}` : whole;
    },
  );
}

/** Checks the joined modules with the strict compiler; faults are told by cell and line. */
export function typecheck(notebooks: readonly Notebook[], folder: string): Promise<void> {
  const compiler = inRoot("node_modules/typescript/bin/tsc");
  return new Promise((resolve, reject) => {
    execFile(process.execPath, [compiler, "-p", folder, "--pretty", "false"], (error, report) => {
      if (!error) return resolve();
      const faults = faultsIn(report, notebooks);
      reject(
        new CourseError(
          faults.length > 0 ? faults.join("\n") : `tsc failed: ${report || error.message}`,
        ),
      );
    });
  });
}

import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { type Outputs, type Progress, runNotebooks } from "../kernel/run.js";
import { hashFiles } from "./hash.js";
import { codeCells, type Notebook } from "./notebook.js";
import { inRoot } from "./paths.js";

const folder = inRoot(".cache/outputs");

/** What, besides its own cells, decides what a chapter shows. */
function surroundings(): string {
  const lock = readFileSync(inRoot("package-lock.json"));
  const packages = hashFiles([
    inRoot("lib/dist"),
    inRoot("site/cells/dist/cells"),
    inRoot("site/cells/dist/say"),
    inRoot("site/kernel"),
  ]);
  return createHash("sha256").update(lock).update(packages).update(process.version).digest("hex");
}

function keyOf(notebook: Notebook, around: string): string {
  const cells = JSON.stringify(codeCells(notebook).map(({ id, source }) => [id, source]));
  return createHash("sha256").update(around).update(cells).digest("hex");
}

function recall(key: string): Outputs | undefined {
  try {
    return JSON.parse(readFileSync(`${folder}/${key}.json`, "utf8"));
  } catch {
    return undefined;
  }
}

/** What each chapter's cells display, run only where code, packages or Node changed since last time. */
export async function cachedOutputs(
  notebooks: readonly Notebook[],
  progress: Progress,
): Promise<Map<string, Outputs>> {
  mkdirSync(folder, { recursive: true });
  const around = surroundings();
  const keys = new Map(notebooks.map((notebook) => [notebook.name, keyOf(notebook, around)]));
  const known = new Map<string, Outputs>();
  for (const [name, key] of keys) {
    const outputs = recall(key);
    if (outputs) known.set(name, outputs);
  }
  const stale = notebooks.filter(({ name }) => !known.has(name));
  const fresh =
    stale.length > 0 ? await runNotebooks(stale, inRoot("notebooks"), progress) : new Map();
  for (const [name, outputs] of fresh) {
    writeFileSync(`${folder}/${keys.get(name)}.json`, JSON.stringify(outputs));
  }
  return new Map([...known, ...fresh]);
}

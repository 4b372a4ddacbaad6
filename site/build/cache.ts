import { createHash } from "node:crypto";
import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { type Outputs, type Running, runNotebooks } from "../kernel/run.js";
import { cacheFile } from "./cache-folder.js";
import { hashFiles } from "./hash.js";
import { kept } from "./kept.js";
import { codeCells, type Notebook } from "./notebook.js";
import { inRoot } from "./paths.js";

const KEPT_DAYS = 30; // unused
const folder = () => cacheFile("outputs");
const fileOf = (key: string): string => `${folder()}/${key}.json`;

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

function keyOf(notebook: Notebook, around: string, { madeFor, typesChecked }: Running): string {
  const cells = JSON.stringify(codeCells(notebook).map(({ id, source }) => [id, source]));
  const how = JSON.stringify([madeFor, typesChecked]);
  return createHash("sha256").update(around).update(cells).update(how).digest("hex");
}

function recall(key: string): Outputs | undefined {
  try {
    const outputs = JSON.parse(readFileSync(fileOf(key), "utf8"));
    const now = new Date();
    utimesSync(fileOf(key), now, now);
    return outputs;
  } catch {
    return undefined;
  }
}

/** Whole or not at all, since other clones may read it. */
function keep(key: string, outputs: Outputs): void {
  const unfinished = `${fileOf(key)}.${process.pid}`;
  writeFileSync(unfinished, JSON.stringify(outputs));
  renameSync(unfinished, fileOf(key));
}

function forgetOld(): void {
  const oldest = Date.now() - KEPT_DAYS * 24 * 3600 * 1000;
  for (const name of readdirSync(folder())) {
    const file = `${folder()}/${name}`;
    if ((statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? oldest) < oldest)
      rmSync(file, { force: true });
  }
}

/** What each chapter's cells display, run only where code, packages or Node changed since last time. */
export async function cachedOutputs(
  notebooks: readonly Notebook[],
  running: Running,
): Promise<Map<string, Outputs>> {
  mkdirSync(folder(), { recursive: true });
  const around = kept("surroundings", "", surroundings);
  const keys = new Map(
    notebooks.map((notebook) => [notebook.name, keyOf(notebook, around, running)]),
  );
  const known = new Map<string, Outputs>();
  for (const [name, key] of keys) {
    const outputs = recall(key);
    if (outputs) known.set(name, outputs);
  }
  const stale = notebooks.filter(({ name }) => !known.has(name));
  if (stale.length === 0) return known;
  forgetOld();
  const fresh = await runNotebooks(stale, inRoot("notebooks"), running);
  for (const [name, outputs] of fresh) keep(keys.get(name) ?? "", outputs);
  return new Map([...known, ...fresh]);
}

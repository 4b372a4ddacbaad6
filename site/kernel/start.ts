import { type ChildProcess, fork } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, renameSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { inRoot } from "../build/paths.js";

/** The worker as plain JavaScript, so that Node loads it and the packages as a Jupyter kernel does: without a loader. */
async function workerFile(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL("worker.ts", import.meta.url))],
    ...{ bundle: true, write: false, platform: "node", format: "esm", packages: "external" },
  });
  const text = outputFiles[0]?.text ?? "";
  const name = createHash("sha256").update(text).digest("hex").slice(0, 16);
  const file = inRoot(`.cache/kernel/${name}.mjs`);
  if (existsSync(file)) return file;
  mkdirSync(inRoot(".cache/kernel"), { recursive: true });
  const unfinished = `${file}.${process.pid}`;
  writeFileSync(unfinished, text);
  renameSync(unfinished, file);
  return file;
}

/** Gives what starts a kernel in a process of its own, which works in the folder. */
export async function kernelStarter(
  directory: string,
  typesChecked: boolean,
): Promise<() => ChildProcess> {
  const worker = await workerFile();
  const told = typesChecked ? ["--types-checked"] : [];
  // Some Nodes say on the error stream, which fails a cell, that a package is a module.
  const execArgv = ["--disable-warning=ExperimentalWarning"];
  return () => fork(worker, told, { cwd: directory, execArgv });
}

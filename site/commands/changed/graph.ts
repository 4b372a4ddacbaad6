import { readdirSync } from "node:fs";
import { build, type Metafile } from "esbuild";
import { inRoot } from "../../build/paths.js";

/** For each entry (a test file, a page's script), the files whose code it runs and the imports between. */
export type Graph = ReadonlyMap<string, ReadonlyMap<string, number>>;

const alias = {
  "@rollbook/lib": "./lib/index.ts",
  "@rollbook/chapters": "./lib/index.ts",
  "@rollbook/cells": "./site/cells/index.ts",
  "@rollbook/page": "./site/cells/browser/page.ts",
};

/** Files below a folder whose path ends so. */
export const filesBelow = (folder: string, ending: string): string[] =>
  readdirSync(inRoot(folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(ending))
    .map((name) => `${folder}/${name}`);

/** Imports on the shortest way from an entry to every file that it reaches. */
function distances({ inputs }: Metafile, entry: string): Map<string, number> {
  const found = new Map([[entry, 0]]);
  for (const [file, distance] of found)
    for (const { path } of inputs[file]?.imports ?? [])
      if (!found.has(path)) found.set(path, distance + 1);
  return found;
}

/** Follows imports as the bundler does, by name: of a file that gathers others only what is used counts. */
export async function importsOf(entryPoints: readonly string[]): Promise<Graph> {
  const { metafile } = await build({
    absWorkingDir: inRoot("."),
    entryPoints: [...entryPoints],
    alias,
    bundle: true,
    write: false,
    metafile: true,
    format: "esm",
    platform: "node",
    packages: "external",
    outdir: ".cache/graph",
    logLevel: "error",
  });
  const graph = new Map<string, Map<string, number>>();
  for (const { entryPoint, inputs } of Object.values(metafile.outputs)) {
    if (entryPoint === undefined) continue;
    const away = distances(metafile, entryPoint);
    const used = Object.entries(inputs).filter(([, { bytesInOutput }]) => bytesInOutput > 0);
    graph.set(entryPoint, new Map(used.map(([file]) => [file, away.get(file) ?? 0])));
  }
  return graph;
}

import { build, type Plugin } from "esbuild";
import type { Notebook } from "./notebook.js";
import { inRoot } from "./paths.js";

/** The two packages a cell may import, as the page's shared script holds them. */
const shared: Readonly<Record<string, string>> = {
  "@rollbook/lib": "rollbook.lib",
  "@rollbook/cells": "rollbook.cells",
};

const fromShared: Plugin = {
  name: "from-shared-script",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^@rollbook\// }, ({ path }) =>
      path in shared ? { path, namespace: "shared" } : undefined,
    );
    onLoad({ filter: /.*/, namespace: "shared" }, ({ path }) => ({
      contents: `module.exports = ${shared[path]};`,
    }));
  },
};

const common = { bundle: true, minify: true, format: "iife", target: "es2022" } as const;

/** Writes the script that all chapters share. */
export async function bundleShared(outfile: string): Promise<void> {
  await build({
    ...common,
    outfile,
    alias: { "@rollbook/lib": inRoot("lib/index.ts") },
    entryPoints: [inRoot("site/cells/browser/shared.ts")],
  });
}

/** Writes each chapter's own script from its joined module; classic scripts, so that a page opened as a file is live too. */
export async function bundleChapters(
  notebooks: readonly Notebook[],
  joined: string,
  outdir: string,
): Promise<void> {
  const entryPoints = notebooks.map(({ name }) => `${joined}/${name}.ts`);
  await build({ ...common, outdir, plugins: [fromShared], entryPoints });
}

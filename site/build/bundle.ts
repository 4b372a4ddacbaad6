import { type BuildFailure, build, type Plugin } from "esbuild";
import { cellAt, join } from "./join.js";
import { CourseError, type Notebook, placeIn } from "./notebook.js";
import { inRoot } from "./paths.js";

/** The packages that the shared script holds, and where it holds them. */
const shared: Readonly<Record<string, string>> = {
  "@rollbook/lib": "rollbook.lib",
  "@rollbook/cells": "rollbook.cells",
  "@rollbook/page": "rollbook.page",
};

/** What a cell may import. */
const forCells = ["@rollbook/lib", "@rollbook/cells"];

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

const cellsImportNothingElse: Plugin = {
  name: "cells-import-nothing-else",
  setup({ onResolve }) {
    onResolve({ filter: /.*/ }, ({ path, kind }) => {
      if (kind === "entry-point" || forCells.includes(path)) return undefined;
      return { errors: [{ text: `a cell may import ${forCells.join(" and ")}, not ${path}` }] };
    });
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

/** Writes the script that draws axes in the page, which only loads it where it needs its own. */
export async function bundleFrame(outfile: string): Promise<void> {
  const entryPoints = [inRoot("site/frame/main.ts")];
  const define = { "window.devicePixelRatio": "2" }; // else Plot moves its lines by half a pixel, which the curves do not
  await build({ ...common, outfile, plugins: [fromShared], entryPoints, define });
}

function told(failure: BuildFailure, notebooks: readonly Notebook[]): CourseError {
  const faults = failure.errors.map(({ text, location }) => {
    const notebook = notebooks.find(({ name }) => location?.file.endsWith(`${name}.ts`));
    const at = notebook && cellAt(join(notebook), location?.line ?? 1);
    return notebook && at ? `${placeIn(notebook, at.id, at.line)}: ${text}` : text;
  });
  return new CourseError(faults.join("\n"));
}

/** Writes each chapter's own script from its joined module; classic scripts, so that a page opened as a file is live too. */
export async function bundleChapters(
  notebooks: readonly Notebook[],
  joined: string,
  outdir: string,
): Promise<void> {
  const entryPoints = notebooks.map(({ name }) => `${joined}/${name}.ts`);
  const options = { ...common, outdir, plugins: [cellsImportNothingElse, fromShared], entryPoints };
  try {
    await build({ ...options, logLevel: "silent" });
  } catch (failure) {
    throw told(failure as BuildFailure, notebooks);
  }
}

/** Writes the script of each page beside the chapters. */
export async function bundlePages(
  entryPoints: { in: string; out: string }[],
  outdir: string,
): Promise<void> {
  if (entryPoints.length === 0) return;
  await build({ ...common, outdir, plugins: [fromShared], entryPoints });
}

/** Writes the service worker, with the names of the files it keeps. */
export async function bundleWorker(
  outfile: string,
  files: readonly string[],
  version: string,
): Promise<void> {
  const define = { FILES: JSON.stringify(files), VERSION: JSON.stringify(version) };
  await build({ ...common, outfile, define, entryPoints: [inRoot("site/offline/worker.ts")] });
}

/** A script as text, for a page that holds its scripts in itself. */
export async function bundledText(entryPoint: string): Promise<string> {
  const { outputFiles } = await build({ ...common, write: false, entryPoints: [entryPoint] });
  return outputFiles.map(({ text }) => text).join("");
}

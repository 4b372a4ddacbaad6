import { basename } from "node:path";
import type { BuildFailure, Metafile, Plugin } from "esbuild";
import { cellAt, join } from "./join.js";
import { CourseError, type Notebook, placeIn } from "./notebook.js";
import { filesOfOpening, giving, takenFrom } from "./opening-physics.js";
import { inRoot, root } from "./paths.js";
import { bundle } from "./shipped.js";

type Places = Readonly<Record<string, string>>;

/** Where scripts that were loaded before hold what a script imports. */
const fromCourse: Places = {
  "@rollbook/cells": "rollbook.cells",
  "@rollbook/page": "rollbook.page",
  "@preact/signals-core": "rollbook.signals",
};
const forChapters: Places = { "@rollbook/cells": "rollbook.cells" };
const cellsMayImport = ["@rollbook/lib", "@rollbook/cells"];
const forPages: Places = {
  ...fromCourse,
  "@rollbook/lib": "rollbook.physics",
  "@preact/signals": "rollbook.views.signals",
  preact: "rollbook.views.preact",
  "preact/hooks": "rollbook.views.hooks",
  "preact/jsx-runtime": "rollbook.views.jsx",
};

const loadedBefore = (places: Places): Plugin => ({
  name: "loaded-before",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^(@rollbook|@preact|preact)(\/|$)/ }, ({ path }) =>
      path in places ? { path, namespace: "before" } : undefined,
    );
    onLoad({ filter: /.*/, namespace: "before" }, ({ path }) => ({
      contents: `module.exports = ${places[path]};`,
    }));
  },
});

/** What the chapters and the first page take of the physics from the script before them. */
const usedByChapters = (taking: readonly Metafile[]): Plugin => ({
  name: "used-by-chapters",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^@rollbook\/chapters$/ }, ({ path }) => ({ path, namespace: "used" }));
    onLoad({ filter: /.*/, namespace: "used" }, () => ({
      contents: giving(taking),
      resolveDir: root,
    }));
  },
});

const cellsImportNothingElse = (joined: string): Plugin => ({
  name: "cells-import-nothing-else",
  setup({ onResolve }) {
    onResolve({ filter: /.*/ }, ({ path, importer }) => {
      if (!importer.startsWith(joined) || cellsMayImport.includes(path)) return undefined;
      return {
        errors: [{ text: `a cell may import ${cellsMayImport.join(" and ")}, not ${path}` }],
      };
    });
  },
});

const common = { bundle: true, minify: true, format: "iife", target: "es2022" } as const;

const physics = { "@rollbook/lib": inRoot("lib/index.ts") };

/** Writes the script that every page loads first, with what these bundles take of the physics. */
async function bundleShared(taking: readonly Metafile[], outfile: string): Promise<void> {
  const entryPoints = [inRoot("site/cells/browser/shared.ts")];
  const plugins = [usedByChapters(taking)];
  await bundle({ ...common, outfile, alias: physics, plugins, entryPoints });
}

const cellsFromCourse: Plugin = {
  name: "cells-from-course",
  setup({ onResolve }) {
    onResolve({ filter: /\/cells\/alike\.js$/ }, () => ({
      path: "@rollbook/cells",
      namespace: "before",
    }));
  },
};

/** Writes the script of the first page, which takes physics and cells from the shared one, as chapters do. */
async function bundleFront(opening: Plugin, outfile: string): Promise<Metafile> {
  const before = loadedBefore({ ...fromCourse, ...forChapters });
  const plugins = [opening, cellsFromCourse, before];
  const entryPoints = [inRoot("site/pages/front/main.ts")];
  return (await bundle({ ...common, outfile, alias: physics, plugins, entryPoints })).metafile;
}

/** Writes the script that draws axes in the page, which only loads it where it needs its own. */
export async function bundleFrame(outfile: string): Promise<void> {
  const entryPoints = [inRoot("site/frame/main.ts")];
  const define = { "window.devicePixelRatio": "2" }; // else Plot moves its lines by half a pixel, which the curves do not
  const plugins = [loadedBefore(fromCourse)];
  await bundle({ ...common, outfile, alias: physics, plugins, entryPoints, define });
}

function told(failure: BuildFailure, notebooks: readonly Notebook[]): CourseError {
  const faults = failure.errors.map(({ text, location }) => {
    const notebook = notebooks.find(({ name }) => location?.file.endsWith(`${name}.ts`));
    const at = notebook && cellAt(join(notebook), location?.line ?? 1);
    return notebook && at ? `${placeIn(notebook, at.id, at.line)}: ${text}` : text;
  });
  return new CourseError(faults.join("\n"));
}

/** Writes each chapter's own script from its joined module, with the physics that the opening of the course does not need. */
async function bundleChapters(
  notebooks: readonly Notebook[],
  joined: string,
  opening: Plugin,
  outdir: string,
): Promise<Metafile> {
  const entryPoints = notebooks.map(({ name }) => `${joined}/${name}.ts`);
  const plugins = [cellsImportNothingElse(joined), opening, loadedBefore(forChapters)];
  const options = { ...common, outdir, alias: physics, plugins, entryPoints };
  try {
    return (await bundle({ ...options, logLevel: "silent" })).metafile;
  } catch (failure) {
    throw told(failure as BuildFailure, notebooks);
  }
}

/** Writes the scripts of chapters and first page, and the one that all pages load before their own; classic scripts, so that a page opened as a file is live too. */
export async function bundleCourse(
  notebooks: readonly Notebook[],
  joined: string,
  out: string,
): Promise<void> {
  const opening = takenFrom(
    await filesOfOpening(notebooks.map(({ name }) => `${joined}/${name}.ts`)),
  );
  const chapters = await bundleChapters(notebooks, joined, opening, out);
  const front = await bundleFront(opening, `${out}/front.js`);
  await bundleShared([chapters, front], `${out}/course.js`);
}

/** Names of pages whose script takes something from a script that is loaded before it. */
export interface Taking {
  readonly physics: ReadonlySet<string>;
  readonly views: ReadonlySet<string>;
}

/** Writes the script of each page beside the chapters; answers which of them call the physics and the view library. */
export async function bundlePages(
  entryPoints: { in: string; out: string }[],
  outdir: string,
): Promise<Taking> {
  const plugins = [loadedBefore(forPages)];
  const { metafile } = await bundle({ ...common, outdir, plugins, entryPoints });
  const taking = (path: string) => {
    const found = Object.entries(metafile.outputs).filter(
      ([, { inputs }]) => `before:${path}` in inputs,
    );
    return new Set(found.map(([file]) => basename(file, ".js")));
  };
  return {
    physics: taking("@rollbook/lib"),
    views: new Set([...taking("preact"), ...taking("preact/jsx-runtime")]),
  };
}

/** Writes the view library, which the pages that are drawn with it load before their own script. */
export async function bundleViews(outfile: string): Promise<void> {
  const plugins = [loadedBefore(fromCourse)];
  await bundle({ ...common, outfile, plugins, entryPoints: [inRoot("site/ui/shared.ts")] });
}

/** Writes the whole physics, which pages load before their own script. */
export async function bundlePhysics(outfile: string): Promise<void> {
  const entryPoints = [inRoot("site/cells/browser/physics.ts")];
  await bundle({ ...common, outfile, alias: physics, entryPoints });
}

/** Writes the scripts with which cells are edited; `define` gives what goes into them, as JSON by name. */
export async function bundleWorkbench(
  entryPoints: { in: string; out: string }[],
  outdir: string,
  define: Record<string, string>,
): Promise<void> {
  const plugins = [loadedBefore(fromCourse)];
  await bundle({ ...common, outdir, alias: physics, plugins, entryPoints, define });
}

/** Files by name, each with the hash of its content. */
export type Hashes = Readonly<Record<string, string>>;

/** Writes the service worker, with the files that it keeps at once and those that it keeps once used. */
export async function bundleWorker(
  outfile: string,
  kept: { first: Hashes; later: Hashes; version: string },
): Promise<void> {
  const define = {
    FILES: JSON.stringify(kept.first),
    LATER: JSON.stringify(kept.later),
    VERSION: JSON.stringify(kept.version),
  };
  await bundle({ ...common, outfile, define, entryPoints: [inRoot("site/offline/worker.ts")] });
}

/** A script as text, for a page that holds its scripts in itself. */
export async function bundledText(entryPoint: string): Promise<string> {
  const options = { ...common, alias: physics, entryPoints: [entryPoint] };
  const { outputFiles } = await bundle({ ...options, write: false });
  return (outputFiles ?? []).map(({ text }) => text).join("");
}

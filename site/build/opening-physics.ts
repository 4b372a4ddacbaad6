import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { build, type Metafile, type Plugin } from "esbuild";
import { inRoot, root } from "./paths.js";

/** Who reads on loads the rest of the physics with the chapters that call it. */
const CHAPTERS_IN_OPENING = 2;

const withoutChapters: Plugin = {
  name: "without-chapters",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^@rollbook\/(chapters|cells|page)$/ }, ({ path }) => ({
      path,
      namespace: "left-out",
    }));
    onLoad({ filter: /.*/, namespace: "left-out" }, () => ({ contents: "module.exports = {};" }));
  },
};

/** What of these inputs came into a bundle. */
export const cameInto = ({ outputs }: Metafile): string[] =>
  Object.values(outputs).flatMap(({ inputs }) =>
    Object.keys(inputs).filter((file) => (inputs[file]?.bytesInOutput ?? 0) > 0),
  );

/**
 * Files of the physics, by their whole path, that the script of every page, the front page and the first chapters call.
 *
 * @param chapters - joined modules in the order in which they are read
 */
export async function filesOfOpening(chapters: readonly string[]): Promise<ReadonlySet<string>> {
  const { metafile } = await build({
    absWorkingDir: root,
    bundle: true,
    write: false,
    metafile: true,
    logLevel: "silent",
    outdir: "opening",
    alias: { "@rollbook/lib": inRoot("lib/index.ts") },
    plugins: [withoutChapters],
    entryPoints: [
      inRoot("site/cells/browser/shared.ts"),
      inRoot("site/pages/front/main.ts"),
      ...chapters.slice(0, CHAPTERS_IN_OPENING),
    ],
  });
  return new Set(
    cameInto(metafile)
      .filter((file) => file.startsWith("lib/"))
      .map(inRoot),
  );
}

const valuesIn = (source: string): string[] =>
  [...source.matchAll(/^export (?:async )?(?:function|const|class) (\w+)/gm)].map(
    ([, name = ""]) => name,
  );

const GIVEN = "given";
const exportLine = (name: string, from: string): string => `export { ${name} } from "${from}";`;

/** Takes from the script that is loaded before what these files define. */
export const takenFrom = (files: ReadonlySet<string>): Plugin => ({
  name: "taken-from-opening",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^\.\.?\// }, ({ path, resolveDir }) => {
      const file = resolve(resolveDir, path).replace(/\.js$/, ".ts");
      if (!files.has(file)) return undefined;
      return { path: file, namespace: "opening", sideEffects: false };
    });
    onLoad({ filter: /.*/, namespace: "opening" }, ({ path }) => ({
      contents: valuesIn(readFileSync(path, "utf8"))
        .map((name) => exportLine(name, `${GIVEN}:${path}#${name}`))
        .join("\n"),
    }));
    onResolve({ filter: new RegExp(`^${GIVEN}:`) }, ({ path }) => ({
      path: path.slice(GIVEN.length + 1),
      namespace: GIVEN,
      sideEffects: false,
    }));
    onLoad({ filter: /.*/, namespace: GIVEN }, ({ path }) => {
      const name = path.split("#").at(-1);
      return { contents: `export const ${name} = rollbook.lib.${name};` };
    });
  },
});

/** A module that gives what these bundles take so. */
export function giving(bundles: readonly Metafile[]): string {
  const taken = bundles.flatMap(cameInto).filter((input) => input.startsWith(`${GIVEN}:`));
  return [...new Set(taken)]
    .map((input) => input.slice(GIVEN.length + 1).split("#") as [string, string])
    .map(([file, name]) => exportLine(name, file))
    .join("\n");
}

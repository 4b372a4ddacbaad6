import { readdirSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { inRoot, root } from "../build/paths.js";

const living = readdirSync(inRoot("site/cells/living")).map((file) => `site/cells/living/${file}`);
const playing = ["site/cells/browser/player.ts", "site/cells/browser/motion.ts"];

/** Gzip bytes of the living car's own files as they are shipped: what they draw, and what plays them. */
export async function livingWeight(): Promise<number> {
  const own = new Set([...living, ...playing].map(inRoot));
  const { outputFiles } = await build({
    stdin: {
      contents: [...own].map((file) => `export * from ${JSON.stringify(file)};`).join("\n"),
      resolveDir: root,
    },
    ...{ bundle: true, minify: true, write: false, format: "esm", target: "es2022" },
    plugins: [
      {
        name: "own-files-alone",
        setup: ({ onResolve }) =>
          onResolve({ filter: /^[^/]/ }, async ({ path, resolveDir, kind }) => {
            if (kind === "entry-point") return undefined;
            const file = new URL(path.replace(/\.js$/, ".ts"), `file://${resolveDir}/`).pathname;
            return own.has(file) ? { path: file } : { path, external: true };
          }),
      },
    ],
  });
  return gzipSync(outputFiles[0]?.contents ?? "", { level: 9 }).length;
}

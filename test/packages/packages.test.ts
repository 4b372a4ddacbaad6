import { execFileSync, spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { runInNewContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { build, transformSync } from "esbuild";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { parseNotebook } from "../../site/build/notebook.js";
import { inRoot } from "../../site/build/paths.js";
import { runNotebooks } from "../../site/kernel/run.js";
import { notebookText } from "../site/small-course.js";
import { type EmptyFolder, installPacked, remove } from "./empty-folder.js";

let folder: EmptyFolder;
beforeAll(() => {
  folder = installPacked();
}, 300_000);
afterAll(() => remove(folder));

const inFolder = (path: string): string => join(folder.path, path);

/** The code of a package's README, a block each. */
function blocksOf(name: string): string[] {
  const text = readFileSync(inFolder(`node_modules/${name}/README.md`), "utf8");
  return [...text.matchAll(/```ts\n([\s\S]*?)```/g)].map(([, block = ""]) => block);
}

/** The names of these blocks as modules in the folder, with types and without. */
function written(name: string): string[] {
  return blocksOf(name).map((block, i) => {
    const module = `${name.replace(/\W/g, "")}-${i}`;
    writeFileSync(inFolder(`${module}.ts`), block);
    writeFileSync(inFolder(`${module}.js`), transformSync(block, { loader: "ts" }).code);
    return module;
  });
}

/** What the lines of a block say that they print. */
const promisedBy = (block: string): string[] =>
  [...block.matchAll(/console\.log\(.*\); \/\/ → (.*)/g)].map(([, printed = ""]) => printed);

/** A module of the folder, bundled for browsers. */
async function bundleOf(contents: string): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: folder.path },
    ...{ bundle: true, minify: true, write: false, format: "iife", globalName: "bundled" },
    ...{ platform: "browser", target: "es2022" },
  });
  return outputFiles?.[0]?.text ?? "";
}

/** What a script prints where there is a console and nothing else of Node. */
function printedBy(script: string): string[] {
  const printed: string[] = [];
  runInNewContext(script, { console: { log: (line: unknown) => printed.push(String(line)) } });
  return printed;
}

describe("packed and installed in an empty folder", () => {
  test.each(["@rollbook/lib", "@rollbook/cells"])(
    "%s holds what runs, its types and its papers",
    (name) => {
      const files = folder.packed.get(name) ?? [];
      const papers = ["CHANGELOG.md", "LICENSE", "README.md", "package.json"];
      expect(files.filter((file) => !file.startsWith("dist/")).sort()).toEqual(papers);
      expect(files.filter((file) => !/\.(js|d\.ts)$|^[^/]+$/.test(file))).toEqual([]);
      const licence = readFileSync(inFolder(`node_modules/${name}/LICENSE`), "utf8");
      expect(licence).toBe(readFileSync(inRoot("LICENSE"), "utf8"));
    },
  );

  test.each([
    ["nodenext", "nodenext"],
    ["bundler", "esnext"],
  ])(
    "the code of both READMEs is typed right under %s, library checks on",
    (resolution, module) => {
      const names = [...written("@rollbook/lib"), ...written("@rollbook/cells")];
      const compilerOptions = {
        ...{ moduleResolution: resolution, module, target: "es2022", lib: ["es2022", "dom"] },
        ...{ strict: true, noEmit: true, skipLibCheck: false, types: [] },
      };
      const files = names.map((name) => `${name}.ts`);
      writeFileSync(inFolder("tsconfig.json"), JSON.stringify({ compilerOptions, files }));
      const tsc = inRoot("node_modules/typescript/bin/tsc");
      const { stdout } = spawnSync(process.execPath, [tsc, "-p", folder.path], {
        encoding: "utf8",
      });
      expect(stdout).toBe("");
    },
  );

  test("lib's README prints what it says, in Node and bundled for a browser", async () => {
    const promised = blocksOf("@rollbook/lib").flatMap(promisedBy);
    expect(promised.length).toBeGreaterThan(5);
    const all = written("@rollbook/lib").map((name) => `import "./${name}.js";`);
    writeFileSync(inFolder("all.js"), all.join("\n"));
    const inNode = execFileSync(process.execPath, [inFolder("all.js")], { encoding: "utf8" });
    expect(inNode.trim().split("\n")).toEqual(promised);
    expect(printedBy(await bundleOf(all.join("\n")))).toEqual(promised);
  });

  test("the cells of the other README show in a kernel what they describe", async () => {
    const [cell = ""] = blocksOf("@rollbook/cells");
    const notebook = parseNotebook("readme", notebookText([["code", "all", cell]]));
    const shown =
      (await runNotebooks([notebook], folder.path, { progress() {} })).get("readme")?.all ?? [];
    expect(shown.map((html) => /^<\w+ class="(\w+)/.exec(html)?.[1])).toEqual([
      ...["predict", "figure", "worked"],
    ]);
    expect(shown[2]).toContain('data-worked="2000"'); // by hand: 1000·6·0.5/1.5
  });

  test.each([
    ['export { lateralLoadTransfer } from "@rollbook/lib";', 1],
    ['export { wheelRate } from "@rollbook/lib/physics";', 1],
    ['export * from "@rollbook/lib/physics";', 80],
  ])("%s costs less than %i kB of a bundle", async (contents, most) => {
    const size = gzipSync(await bundleOf(contents)).length;
    expect(size).toBeGreaterThan(200);
    expect(size).toBeLessThan(most * 1000);
  });

  test("three entries hold a part each, and the whole one all of it", async () => {
    const count = (entry: string) =>
      `Object.keys(await import("@rollbook/lib${entry}")).sort().join()`;
    const script = `console.log(JSON.stringify([${["", "/physics", "/measure", "/day"].map(count)}]))`;
    const told = execFileSync(process.execPath, ["--input-type=module", "-e", script], {
      ...{ cwd: folder.path, encoding: "utf8" },
    });
    const [whole, ...parts] = (JSON.parse(told) as string[]).map((names) => names.split(","));
    expect(parts).toHaveLength(3);
    expect(parts.flat().sort()).toEqual(whole);
  });
});

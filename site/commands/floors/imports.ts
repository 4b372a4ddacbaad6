import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path/posix";

/** Files, and the files that each imports, types too. */
export type Imports = ReadonlyMap<string, readonly string[]>;

/** Every TypeScript file of a folder with what it imports by relative path, as paths below the folder. */
export function importsIn(folder: string): Imports {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && !file.startsWith("dist/"))
    .sort();
  return new Map(
    files.map((file) => [file, importsOf(file, readFileSync(join(folder, file), "utf8"))]),
  );
}

/** `import … from "./a.js"`, `export … from "./a.js"`, `import "./a.js"` and `import("./a.js")`. */
const relative = /(?:\bfrom|\bimport)\s*\(?\s*"(\.[^"]+)"/g;

/** What the text of a file imports by relative path. */
export function importsOf(file: string, text: string): string[] {
  const named = [...text.matchAll(relative)].map(([, path = ""]) => path);
  const files = named.map((path) => normalize(join(dirname(file), path)).replace(/\.js$/, ".ts"));
  return [...new Set(files)];
}

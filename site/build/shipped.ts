import { existsSync, readdirSync, readFileSync } from "node:fs";
import { type BuildOptions, type BuildResult, build } from "esbuild";
import { CourseError } from "./notebook.js";
import { inRoot } from "./paths.js";

/** Folders of packages of which something is shipped: formulas and their letters in any case. */
const shipped = new Set(["node_modules/katex"]);

const packageOf = (file: string): string | undefined =>
  /^(.*\bnode_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(file)?.[1];

type Told = BuildOptions & { metafile: true };

/** Bundles as esbuild does, and remembers the packages of which something came in. */
export async function bundle(options: BuildOptions): Promise<BuildResult<Told>> {
  const result = await build<Told>({ ...options, metafile: true });
  for (const { inputs } of Object.values(result.metafile.outputs))
    for (const [file, { bytesInOutput }] of Object.entries(inputs)) {
      const folder = bytesInOutput > 0 ? packageOf(file) : undefined;
      if (folder !== undefined) shipped.add(folder);
    }
  return result;
}

function noticeOf(folder: string): string {
  const about = JSON.parse(readFileSync(inRoot(`${folder}/package.json`), "utf8"));
  const texts = readdirSync(inRoot(folder)).filter((file) => /^(licen[cs]e|notice)\b/i.test(file));
  if (texts.length === 0)
    throw new CourseError(`${folder} is shipped, but no file says under which licence.`);
  const read = texts.map((file) => readFileSync(inRoot(`${folder}/${file}`), "utf8").trim());
  return [`${about.name} ${about.version} (${about.license})`, ...read].join("\n\n");
}

const opening =
  "Rollbook is under the licence in LICENSE. It holds parts of these packages, whose authors ask that their notices go along:";

/** The notices of all packages of which something was shipped since the program began. */
export const notices = (): string =>
  `${[opening, ...[...shipped].filter(isInstalled).sort().map(noticeOf)].join(`\n\n${"-".repeat(72)}\n\n`)}\n`;

const isInstalled = (folder: string): boolean => existsSync(inRoot(`${folder}/package.json`));

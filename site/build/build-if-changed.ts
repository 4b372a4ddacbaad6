import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { madeFrom } from "../api/kept.js";
import type { Progress } from "../kernel/run.js";
import type { BuildOptions } from "./build.js";
import { hashFiles } from "./hash.js";
import { kept } from "./kept.js";
import { inRoot } from "./paths.js";

/** One hash of what turns chapters into a course. */
const program = (): string =>
  createHash("sha256")
    .update(hashFiles([inRoot("lib/dist"), inRoot("site")]))
    .update(readFileSync(inRoot("docs/glossary.md")))
    .update(readFileSync(inRoot("package-lock.json")))
    .digest("hex");

/** One hash of everything that the course is made from. */
function everything(notebooks: string, addresses: readonly string[]): string {
  const chapters = readdirSync(notebooks).filter((file) => file.endsWith(".ipynb"));
  const texts = chapters.sort().map((file) => [file, readFileSync(`${notebooks}/${file}`, "utf8")]);
  return createHash("sha256")
    .update(JSON.stringify(texts))
    .update(kept("program", "", program))
    .update(madeFrom())
    .update(addresses.join(" "))
    .update(process.version)
    .digest("hex");
}

/** Builds the course unless its folder was made from just these files; says whether it built. */
export async function buildIfChanged(
  progress: Progress,
  options: Pick<BuildOptions, "notebooks" | "out" | "joined" | "url" | "rest"> = {},
): Promise<boolean> {
  const { notebooks = inRoot("notebooks"), out = inRoot("dist"), url = "", rest = "" } = options;
  const stamp = `${out}/.built-from`;
  const now = everything(notebooks, [url, rest]);
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === now) return false;
  const { buildCourse } = await import("./build.js");
  await buildCourse({ ...options, progress });
  writeFileSync(stamp, now);
  return true;
}

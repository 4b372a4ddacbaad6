import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import type { Progress } from "../kernel/run.js";
import { hashFiles } from "./hash.js";
import { inRoot } from "./paths.js";

const stamp = inRoot("dist/.built-from");

/** One hash of everything that the course is made from. */
function everything(): string {
  const folders = ["notebooks", "lib/dist", "site"].map(inRoot);
  return createHash("sha256")
    .update(hashFiles(folders))
    .update(readFileSync(inRoot("docs/glossary.md")))
    .update(readFileSync(inRoot("package-lock.json")))
    .update(process.version)
    .digest("hex");
}

/** Builds the course unless dist/ was made from just these files; says whether it built. */
export async function buildIfChanged(progress: Progress): Promise<boolean> {
  const now = everything();
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === now) return false;
  const { buildCourse } = await import("./build.js");
  await buildCourse({ progress });
  writeFileSync(stamp, now);
  return true;
}

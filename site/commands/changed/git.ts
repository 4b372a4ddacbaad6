import { spawnSync } from "node:child_process";
import { CourseError } from "../../build/notebook.js";
import { inRoot } from "../../build/paths.js";

function git(...args: string[]): string[] {
  const { status, stdout, stderr } = spawnSync("git", args, { cwd: inRoot("."), encoding: "utf8" });
  if (status !== 0) throw new CourseError(`git ${args[0]} did not answer: ${stderr.trim()}`);
  return stdout.split("\n").filter(Boolean);
}

/** Files that differ from a commit, new ones among them. */
export const filesChangedSince = (commit: string): string[] => [
  ...git("diff", "--name-only", commit),
  ...git("ls-files", "--others", "--exclude-standard"),
];

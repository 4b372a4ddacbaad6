import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inRoot } from "../../site/build/paths.js";

const quiet = ["--no-fund", "--no-audit", "--loglevel=error"];
const npm = (cwd: string, ...args: string[]): string =>
  execFileSync("npm", [...args, ...quiet], { cwd, encoding: "utf8", shell: windows });
const windows = process.platform === "win32";

/** A folder outside the repository with nothing in it but what both packages brought. */
export interface EmptyFolder {
  readonly path: string;
  /** Files of each package as it is packed, by its folder in the repository. */
  readonly packed: ReadonlyMap<string, readonly string[]>;
}

/** Packs both packages and installs them there from these files, and what they need from the registry. */
export function installPacked(): EmptyFolder {
  const path = mkdtempSync(join(tmpdir(), "rollbook-packages-"));
  const tarballs = join(path, "packed");
  mkdirSync(tarballs);
  const told = npm(
    inRoot("."),
    ...[
      "pack",
      "--json",
      "--ignore-scripts",
      "--pack-destination",
      tarballs,
      "./lib",
      "./site/cells",
    ],
  );
  const listed: { name: string; files: { path: string }[] }[] = Object.values(JSON.parse(told));
  writeFileSync(join(path, "package.json"), JSON.stringify({ private: true, type: "module" }));
  const files = readdirSync(tarballs).map((file) => join(tarballs, file));
  npm(path, "install", "--prefer-offline", ...files);
  return {
    path,
    packed: new Map(listed.map(({ name, files: all }) => [name, all.map((file) => file.path)])),
  };
}

export const remove = ({ path }: EmptyFolder): void =>
  rmSync(path, { recursive: true, force: true });

import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { build } from "esbuild";
import { inRoot } from "../../build/paths.js";
import type { Tool } from "./tool.js";

const installed = (home: string, name: string): string | undefined => {
  try {
    return JSON.parse(readFileSync(`${home}/node_modules/${name}/package.json`, "utf8")).version;
  } catch {
    return undefined;
  }
};

/** Installs the tool and what its pages import, as the lock says, unless these versions are there. */
function installPackages({ home, locked, packages }: Tool): void {
  const wanted = Object.entries(packages);
  if (wanted.every(([name, version]) => installed(home, name) === version)) return;
  for (const file of ["package.json", "package-lock.json"])
    cpSync(`${locked}/${file}`, `${home}/${file}`);
  const options = ["--no-fund", "--no-audit", "--loglevel=error"];
  // `npm ci` refuses a lock without an optional package for another system that the registry may not have
  execFileSync("npm", ["install", "--prefix", home, ...options], { stdio: "inherit" });
}

/** Puts the physics and the adapted cell helpers where the chapters' imports find them. */
async function linkOwnPackages({ home }: Tool): Promise<void> {
  const own = `${home}/node_modules/@rollbook`;
  rmSync(own, { recursive: true, force: true });
  mkdirSync(`${own}/cells`, { recursive: true });
  symlinkSync(inRoot("lib"), `${own}/lib`, "junction");
  await build({
    entryPoints: [inRoot("site/bench/beside/cells/index.ts")],
    outfile: `${own}/cells/index.js`,
    bundle: true,
    format: "esm",
    target: "es2022",
    external: ["@rollbook/lib", "@observablehq/*"],
  });
  const about = { name: "@rollbook/cells", type: "module", main: "index.js", sideEffects: false };
  writeFileSync(`${own}/cells/package.json`, JSON.stringify(about));
}

/** Makes another tool ready to build; nothing of this is timed. */
export async function install(tool: Tool): Promise<void> {
  mkdirSync(tool.home, { recursive: true });
  installPackages(tool);
  await linkOwnPackages(tool);
}

import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { inRoot } from "../build/paths.js";
import { keptApi, sourcesOfApi } from "./kept.js";

const tool = inRoot(".cache/api-tool");
const locked = inRoot("site/api/locked");

/** Installs the tool and the compiler that it needs, an older one than the project's, unless they are there. */
function installTool(): void {
  const files = ["package.json", "package-lock.json"];
  const read = (folder: string, file: string) =>
    existsSync(`${folder}/${file}`) ? readFileSync(`${folder}/${file}`, "utf8") : "";
  const same = files.every((file) => read(tool, file) === read(locked, file));
  if (same && existsSync(`${tool}/node_modules/typedoc`)) return;
  mkdirSync(tool, { recursive: true });
  for (const file of files) cpSync(`${locked}/${file}`, `${tool}/${file}`);
  const options = ["--no-fund", "--no-audit", "--loglevel=error"];
  execFileSync("npm", ["ci", "--prefix", tool, ...options], {
    ...{ stdio: "inherit", shell: process.platform === "win32" },
  });
}

/** What the tool and its compiler are asked for; `lib` is only read. */
function writeSettings(): void {
  const compilerOptions = { composite: false, noEmit: true, rootDir: inRoot("lib") };
  const [include, exclude] = [[inRoot("lib/**/*.ts")], [inRoot("lib/dist")]];
  const compiler = { extends: inRoot("lib/tsconfig.json"), compilerOptions, include, exclude };
  const pages = {
    name: "@rollbook/lib",
    entryPoints: ["physics", "measure", "day"].map((entry) => inRoot(`lib/${entry}.ts`)),
    readme: inRoot("lib/README.md"),
    tsconfig: `${tool}/tsconfig.json`,
    out: keptApi,
    disableSources: true,
    validation: { notExported: false },
    logLevel: "Warn",
  };
  writeFileSync(`${tool}/tsconfig.json`, JSON.stringify(compiler));
  writeFileSync(`${tool}/typedoc.json`, JSON.stringify(pages));
}

/** Makes the pages about the library's functions from their docstrings. */
export function makeApi(): void {
  installTool();
  writeSettings();
  rmSync(keptApi, { recursive: true, force: true });
  const typedoc = `${tool}/node_modules/typedoc/bin/typedoc`;
  const options = ["--options", `${tool}/typedoc.json`];
  execFileSync(process.execPath, [typedoc, ...options], { stdio: "inherit" });
  writeFileSync(`${keptApi}/.made-from`, sourcesOfApi());
}

import { cpSync, existsSync, readFileSync } from "node:fs";
import { hashFiles } from "../build/hash.js";
import { inRoot } from "../build/paths.js";

/** Where the pages about the library's functions are kept once they were made. */
export const keptApi = inRoot(".cache/api");

/** One hash of what they are made from. */
export const sourcesOfApi = (): string => hashFiles([inRoot("lib"), inRoot("site/api")]);

/** What the kept pages were made from; empty where there are none. */
export function madeFrom(folder = keptApi): string {
  const stamp = `${folder}/.made-from`;
  return existsSync(stamp) ? readFileSync(stamp, "utf8") : "";
}

/** Pages about functions, for the course to take in and to link to. */
export interface Api {
  /** Puts them into the course. */
  readonly copyTo: (out: string) => void;
  /** The address of a function's page, from the course; undefined where it has none. */
  readonly addressOf: (name: string) => string | undefined;
}

/** The kept pages; undefined where none were made, or the library has changed since. */
export function currentApi(folder = keptApi, sources = sourcesOfApi()): Api | undefined {
  if (madeFrom(folder) !== sources) return undefined;
  const pages = ["physics", "measure", "day"].flatMap((entry) =>
    ["functions", "variables"].map((kind) => `${kind}/${entry}`),
  );
  return {
    copyTo: (out) => cpSync(folder, `${out}/api`, { recursive: true }),
    addressOf: (name) => {
      const found = pages.find((page) => existsSync(`${folder}/${page}.${name}.html`));
      return found && `api/${found}.${name}.html`;
    },
  };
}

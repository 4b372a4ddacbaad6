import { readFileSync } from "node:fs";
import { inRoot } from "../../build/paths.js";

/** Where the lock of what is installed stands. */
export const locked = inRoot("site/bench/beside/locked");

/** The tool and what its pages import, in exact versions; the plots are drawn with this course's own version. */
export const packages: Readonly<Record<string, string>> = JSON.parse(
  readFileSync(`${locked}/package.json`, "utf8"),
).dependencies;

const name = "@observablehq/notebook-kit";
/** The general-purpose tool that the chapters also go through. */
export const tool = { name, version: packages[name] ?? "" } as const;

/** Where the tool is installed and all that the comparison writes lies. */
export const home = inRoot(".cache/beside");

/** Names of the chapters that go through both. */
export const isCompared = (name: string): boolean => /^0[1-5]-/.test(name);

import { readFileSync } from "node:fs";
import { inRoot } from "../../build/paths.js";

const versionHere = (name: string): string =>
  JSON.parse(readFileSync(inRoot(`node_modules/${name}/package.json`), "utf8")).version;

/** The general-purpose tool that the chapters also go through. */
export const tool = { name: "@observablehq/notebook-kit", version: "2.1.8" } as const;

/** What its pages import, in exact versions; the plots are drawn with this course's own version. */
export const packages: Readonly<Record<string, string>> = {
  [tool.name]: tool.version,
  "@observablehq/inputs": "0.12.0",
  "@observablehq/plot": versionHere("@observablehq/plot"),
};

/** Where the tool is installed and all that the comparison writes lies. */
export const home = inRoot(".cache/beside");

/** Names of the chapters that go through both. */
export const isCompared = (name: string): boolean => /^0[1-5]-/.test(name);

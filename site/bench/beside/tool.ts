import { readFileSync } from "node:fs";
import { inRoot } from "../../build/paths.js";

/** A general-purpose tool that the chapters also go through. */
export interface Tool {
  readonly name: string;
  readonly version: string;
  /** Where the lock of what is installed stands. */
  readonly locked: string;
  /** Where it is installed and all that the comparison writes for it lies. */
  readonly home: string;
  /** It and what its pages import, in exact versions; the plots are drawn with this course's own version. */
  readonly packages: Readonly<Record<string, string>>;
}

function toolIn(folder: string, name: string): Tool {
  const locked = inRoot(`site/bench/beside/${folder}`);
  const packages = JSON.parse(readFileSync(`${locked}/package.json`, "utf8")).dependencies;
  return {
    ...{ name, locked, packages },
    version: packages[name] ?? "",
    home: inRoot(`.cache/beside/${folder}`),
  };
}

/** Makes pages of notebooks whose cells run in the browser. */
export const notebookKit = toolIn("notebook-kit", "@observablehq/notebook-kit");

/** Makes pages of Markdown, with scripts of its components. */
export const vitepress = toolIn("vitepress", "vitepress");

/** Where all that the comparison writes lies. */
export const home = inRoot(".cache/beside");

/** Names of the chapters that go through all. */
export const isCompared = (name: string): boolean => /^0[1-5]-/.test(name);

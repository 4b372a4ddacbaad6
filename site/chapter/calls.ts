import { readdirSync, readFileSync } from "node:fs";
import * as lib from "../../lib/index.js";
import { join, namesFromLib } from "../build/join.js";
import type { Notebook } from "../build/notebook.js";
import { inRoot } from "../build/paths.js";

/** A function of the library, by what its docstring says first. */
export interface Call {
  readonly name: string;
  readonly file: string;
  readonly says: string;
}

const documented = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\nexport (?:function|const) (\w+)/g;

function callsIn(file: string): Call[] {
  const text = readFileSync(inRoot(`lib/${file}`), "utf8");
  return [...text.matchAll(documented)].map(([, doc = "", name = ""]) => {
    const words = doc
      .replace(/^\s*\* ?/gm, "")
      .trim()
      .replace(/\s+/g, " ");
    return { name, file: `lib/${file}`, says: /^.*?[.:](?=\s|$)/.exec(words)?.[0] ?? words };
  });
}

/** Every documented function of the library that a cell may call. */
export const allCalls = (): Call[] =>
  readdirSync(inRoot("lib"), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && !file.startsWith("dist"))
    .sort()
    .flatMap(callsIn)
    .filter(({ name }) => name in lib);

const SHORTEST = 4; // letters of a word that tells anything
const idle = new Set([
  "where",
  "when",
  "what",
  "which",
  "with",
  "does",
  "that",
  "this",
  "from",
  "your",
]);

/** Calls whose name or first sentence has a word of a title. */
export function callsAbout(title: string, calls: readonly Call[]): Call[] {
  const words = (title.toLowerCase().match(/\p{L}+/gu) ?? []).filter(
    (word) => word.length >= SHORTEST && !idle.has(word),
  );
  const stems = words.map((word) => new RegExp(`\\b${word.replace(/s$/, "")}`, "i"));
  const apart = (name: string) => name.replace(/[A-Z]/g, " $&");
  return calls.filter(({ name, says }) =>
    stems.some((stem) => stem.test(`${apart(name)} ${says}`)),
  );
}

/** Calls that most chapters make, the most called first. */
export function callsMadeMost(notebooks: readonly Notebook[], calls: readonly Call[]): Call[] {
  const used = notebooks.flatMap((notebook) => [...new Set(namesFromLib(join(notebook).source))]);
  const times = (name: string) => used.filter((one) => one === name).length;
  return calls.filter(({ name }) => times(name) > 2).sort((a, b) => times(b.name) - times(a.name));
}

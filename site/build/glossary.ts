import { readFileSync } from "node:fs";
import { slug } from "./markdown.js";
import { CourseError } from "./notebook.js";
import { inRoot } from "./paths.js";

/** A word of the course. */
export interface Term {
  readonly id: string;
  readonly name: string;
  /** What else people call it. */
  readonly also: readonly string[];
  /** One sentence, in markdown, as are the notes. */
  readonly meaning: string;
  readonly symbol?: string;
  readonly standard?: string;
}

const keys = ["also", "symbol", "standard"];

function notesOf(name: string, lines: readonly string[]): Record<string, string> {
  const pairs = lines.map((line) => {
    const [, key = "", value = ""] = /^- (\w+): (.+)$/.exec(line) ?? [];
    if (!keys.includes(key)) {
      throw new CourseError(
        `glossary, ${name}: “${line}” is not a line that opens with ${keys.join(", ")}`,
      );
    }
    return [key, value] as const;
  });
  return Object.fromEntries(pairs);
}

function termOf(entry: string): Term {
  const [name = "", meaning = "", ...lines] = entry.split("\n").filter((line) => line.trim());
  if (!meaning || meaning.startsWith("- ")) {
    throw new CourseError(`glossary, ${name}: the sentence that explains it is missing`);
  }
  const { also = "", ...notes } = notesOf(name, lines);
  const names = also.split(",").map((other) => other.trim());
  return { id: slug(name), name, also: names.filter(Boolean), meaning, ...notes };
}

function ensureOnce(terms: readonly Term[]): void {
  const twice = terms.find(({ id }, index) => terms.findIndex((term) => term.id === id) !== index);
  if (twice) throw new CourseError(`glossary: ${twice.name} stands there twice`);
}

/** The words of a glossary in the form of docs/glossary.md, in the order of the alphabet. */
export function parseGlossary(text: string): Term[] {
  const terms = text.split(/^## /m).slice(1).map(termOf);
  ensureOnce(terms);
  return terms.sort((a, b) => a.name.localeCompare(b.name, "en"));
}

export const glossary = (): Term[] =>
  parseGlossary(readFileSync(inRoot("docs/glossary.md"), "utf8"));

import { mkdirSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { readNotebooks } from "../build/build.js";
import { slug } from "../build/markdown.js";
import { CourseError } from "../build/notebook.js";
import { inRoot } from "../build/paths.js";
import { UsageError } from "../commands/usage.js";
import { allCalls, type Call, callsAbout, callsMadeMost } from "./calls.js";
import type { CourseFolder } from "./folder.js";
import { notebookFor, pinsFor } from "./template.js";

const LONGEST = 80;

function titleFrom(given: string): string {
  const title = given.trim();
  if (title.length <= LONGEST && /\p{L}/u.test(slug(title))) return title;
  throw new UsageError(
    `A title has letters, and ${LONGEST} characters at the most; this has ${title.length}.`,
  );
}

/** The chapters that are there; none in a folder that has none yet. */
function chaptersIn(folder: string) {
  try {
    return readNotebooks(folder);
  } catch (error) {
    if (error instanceof CourseError && error.message.endsWith("no notebooks")) return [];
    throw error;
  }
}

const listed = (calls: readonly Call[]): string =>
  calls.map(({ name, file, says }) => `- \`${name}\` (${file}): ${says}`).join("\n");

/** What to read before a chapter is written. */
function readingList(title: string): string {
  const calls = allCalls();
  const about = callsAbout(title, calls);
  return `# What “${title}” may call

How a chapter is written, and what a cell calls to show something: docs/writing-a-chapter.md.

## What the title names

${about.length > 0 ? listed(about) : "Nothing in the library has a word of the title; see what chapters call most."}

## What chapters call most

${listed(callsMadeMost(readNotebooks(), calls))}
`;
}

/** Files of a new chapter. */
export interface NewChapter {
  readonly number: string;
  readonly notebook: string;
  readonly pins: string;
  readonly calls: string;
}

function write(path: string, text: string): string {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text, { flag: "wx" });
  return path;
}

/** Makes a chapter with a title: a notebook with the sections, its pins, and a list of calls to read. */
export function newChapter(given: string, { notebooks, pinsOf }: CourseFolder): NewChapter {
  const title = titleFrom(given);
  const last = chaptersIn(notebooks).at(-1)?.name.slice(0, 2) ?? "-1";
  const number = String(Number(last) + 1).padStart(2, "0");
  const name = `${number}-${slug(title)}`;
  const inside = pinsOf(name).startsWith(inRoot("test/"));
  const importing = inside ? 'import type { Pins } from "../../site/chapter/pins.js";\n' : "";
  const list = inside ? inRoot(`.cache/calls/${name}.md`) : `${notebooks}/${name}.calls.md`;
  return {
    number,
    notebook: write(`${notebooks}/${name}.ipynb`, notebookFor(title, slug)),
    pins: write(pinsOf(name), pinsFor(importing)),
    calls: write(list, readingList(title)),
  };
}

import { readFileSync } from "node:fs";
import { readNotebooks } from "../build/build.js";
import { buildIfChanged } from "../build/build-if-changed.js";
import { bundledText } from "../build/bundle.js";
import { cachedOutputs } from "../build/cache.js";
import { type Chapter, chapterOf } from "../build/chapter.js";
import { glossary } from "../build/glossary.js";
import { CourseError } from "../build/notebook.js";
import { inRoot } from "../build/paths.js";
import type { MadeFor } from "../cells/made-for.js";
import { UsageError } from "../commands/usage.js";
import type { Progress } from "../kernel/run.js";
import { prefixOf } from "./own-ids.js";
import type { Primer } from "./primer.js";

const dist = (file: string): string => readFileSync(inRoot(`dist/${file}`), "utf8");

const numberOf = ({ name }: { readonly name: string }): string => /^\d+/.exec(name)?.[0] ?? "";

/** The chapters with these numbers, in the order of the course; all where none is named. */
export function chosen<Named extends { readonly name: string }>(
  chapters: readonly Named[],
  numbers: readonly string[],
): Named[] {
  const known = chapters.map(numberOf);
  const wanted = numbers.map((number) => number.padStart(2, "0"));
  const strange = wanted.find((number) => !known.includes(number));
  if (strange !== undefined) {
    throw new UsageError(`chapters: there is no ${strange}; the course has ${known.join(", ")}.`);
  }
  return chapters.filter((chapter) => wanted.length === 0 || wanted.includes(numberOf(chapter)));
}

/** The caution of the course's first page, which stands first here too. */
function caution(): string {
  const welcome = readFileSync(inRoot("site/welcome.md"), "utf8");
  const [found] = /^> \*\*Caution[^\n]*(\n>[^\n]*)*/m.exec(welcome) ?? [];
  if (!found) throw new CourseError("site/welcome.md has no caution for the primer to begin with");
  return found;
}

/** The scripts that bring the chapters' figures to life, each chapter's under its own prefix. */
export async function scriptsOf(chapters: readonly Chapter[]): Promise<string[]> {
  const own = chapters.flatMap(({ name, number }) => [
    `rollbook.within("${prefixOf(number)}");`,
    dist(`${name}.js`),
  ]);
  return [
    dist("course.js"),
    dist("frame.js"),
    await bundledText(inRoot("site/primer/within.ts")),
    ...own,
  ];
}

type Parts = Pick<Primer, "chapters" | "terms" | "caution" | "style" | "notices" | "course">;

/** What the course gives to a file of its own, built first where something changed. */
export async function partsOfCourse(
  numbers: readonly string[],
  progress: Progress,
  madeFor?: MadeFor,
): Promise<Parts> {
  const all = readNotebooks();
  const notebooks = chosen(all, numbers);
  await buildIfChanged(progress);
  const outputs = await cachedOutputs(notebooks, { progress, madeFor, typesChecked: true });
  const chapters = notebooks.map((notebook) =>
    chapterOf(notebook, outputs.get(notebook.name) ?? {}),
  );
  const style = dist("course.css") + readFileSync(inRoot("site/primer/style.css"), "utf8");
  return {
    ...{ chapters, terms: glossary(), caution: caution(), style, notices: dist("NOTICES.txt") },
    course: new Map(all.map(({ name }) => [numberOf({ name }), name])),
  };
}

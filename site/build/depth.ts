import type { Chapter } from "./chapter.js";
import { minutesOf } from "./minutes.js";

/** The headings under which a chapter's one idea stands; the others go deeper. */
const core: ReadonlySet<string> = new Set(["Puzzle", "Predict", "What happens", "Why", "Summary"]);
export const EXERCISES = "Exercises";
const CORE_EXERCISES = 2;

/** What a heading opens with that goes deeper where its like do not: a smaller one in a core part, or a part of a short chapter. */
const aside = "Deeper: ";
const withoutAside = (html: string): string => html.replace(`>${aside}`, ">");

/** A heading of a chapter with all that stands under it. */
export interface Part {
  readonly html: string;
  readonly id: string;
  readonly title: string;
  readonly isDeeper: boolean;
  /** Minutes of what belongs to the core, and of what goes deeper. */
  readonly core: number;
  readonly deeper: number;
}

const EXERCISE = '<section class="exercise"';

const exercisesIn = (html: string): string[] => html.split(new RegExp(`(?=${EXERCISE})`)).slice(1);

/** Marks the exercises that go deeper. */
function marked(html: string): string {
  let seen = 0;
  return html.replaceAll(EXERCISE, (tag) => {
    seen += 1;
    return seen > CORE_EXERCISES ? `${tag} data-deeper` : tag;
  });
}

/** A part cut before each of its smaller headings. */
const stretchesOf = (html: string): string[] => html.split(/(?=<h3 )/);

/** Whether a stretch of a core part goes deeper: its heading says so. */
const isAside = (html: string): boolean =>
  /^<h3 [^>]*>(?<said>[^<]*)/.exec(html)?.groups?.said?.startsWith(aside) ?? false;

/** A core part in which every stretch that goes deeper stands by itself, `wrap`ped with its minutes, which say it in the heading's place. */
export const withAsides = (
  html: string,
  wrap: (stretch: string, minutes: number) => string,
): string =>
  stretchesOf(html)
    .map((stretch) =>
      isAside(stretch) ? wrap(withoutAside(stretch), minutesOf(stretch)) : stretch,
    )
    .join("");

function partOf(html: string): Part {
  const [, id = "", title = ""] = /<h2 id="([^"]*)"[^>]*>([^<]*)/.exec(html) ?? [];
  const all = minutesOf(html);
  if (title.startsWith(aside)) {
    const part = { html: withoutAside(html), id, title: title.slice(aside.length) };
    return { ...part, isDeeper: true, core: 0, deeper: all };
  }
  if (title === EXERCISES) {
    const first = exercisesIn(html).slice(0, CORE_EXERCISES);
    const inCore = first.reduce((sum, one) => sum + minutesOf(one), 0);
    return { html: marked(html), id, title, isDeeper: false, core: inCore, deeper: all - inCore };
  }
  const isDeeper = title !== "" && !core.has(title);
  const deeper = isDeeper ? all : minutesOf(stretchesOf(html).filter(isAside).join(""));
  return { html, id, title, isDeeper, core: all - deeper, deeper };
}

const known = new WeakMap<Chapter, readonly Part[]>();

/** A chapter's parts, the opening without a heading first, each with the minutes that it takes. */
export function partsOf(chapter: Chapter): readonly Part[] {
  const parts = known.get(chapter) ?? chapter.html.split(/(?=<h2 )/).map(partOf);
  known.set(chapter, parts);
  return parts;
}

/** Minutes of a whole chapter. */
export function minutesOfChapter(chapter: Chapter): { core: number; all: number } {
  const parts = partsOf(chapter);
  const core = parts.reduce((sum, part) => sum + part.core, 0);
  return { core, all: core + parts.reduce((sum, part) => sum + part.deeper, 0) };
}

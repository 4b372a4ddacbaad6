import { fold } from "../pages/search/fold.js";
import type { Chapter } from "./chapter.js";
import type { Term } from "./glossary.js";
import { type Section, sectionsOf } from "./sections.js";

/** A section of a chapter, with its words folded for comparing. */
export interface Place {
  readonly chapter: Chapter;
  readonly section: Section;
  readonly words: string;
  readonly bold: readonly string[];
}

const folded = (text: string): string => ` ${fold(text).join(" ")} `;

function placesIn(chapter: Chapter): Place[] {
  return sectionsOf(chapter).map((section) => ({
    chapter,
    section,
    words: folded(section.text),
    bold: section.bold.map(folded),
  }));
}

const known = new WeakMap<Chapter, Place[]>();

/** Every place of the chapters; each chapter is read once. */
export function placesOf(chapters: readonly Chapter[]): Place[] {
  return chapters.flatMap((chapter) => {
    const places = known.get(chapter) ?? placesIn(chapter);
    known.set(chapter, places);
    return places;
  });
}

export const addressOf = ({ chapter, section }: Place): string =>
  section.id ? `${chapter.name}.html#${section.id}` : `${chapter.name}.html`;

interface Mentions {
  /** Where the word is set in bold. */
  readonly explained: Place | undefined;
  /** The first place of each chapter that uses it. */
  readonly used: readonly Place[];
}

export function mentionsOf({ name, also }: Term, places: readonly Place[]): Mentions {
  const own = folded(name);
  const names = [own, ...also.map(folded)];
  const explained = places.find(({ bold }) => bold.some((word) => names.includes(word)));
  const all = places.filter(({ words }) => words.includes(own));
  const used = all.filter(
    ({ chapter }, index) => all.findIndex((other) => other.chapter === chapter) === index,
  );
  return { explained, used };
}

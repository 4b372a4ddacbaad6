import { writeFileSync } from "node:fs";
import MiniSearch from "minisearch";
import { type Entry, indexOptions, type SearchData } from "../pages/search/index-of.js";
import type { Chapter } from "./chapter.js";
import { glossary } from "./glossary.js";
import { plain } from "./markdown.js";
import { addressOf, type Place, placesOf } from "./mentions.js";
import type { SitePage } from "./site-pages.js";

const chapterEntry = (place: Place): Entry => {
  const { chapter, section } = place;
  return {
    id: addressOf(place),
    kind: section.kind,
    title: plain(section.title),
    where: `${chapter.number} ${plain(chapter.title)}`,
    text: section.text,
    also: "",
  };
};

const wordEntries = (): Entry[] =>
  glossary().map(({ id, name, also, meaning }) => ({
    id: `words.html#${id}`,
    kind: "word",
    title: name,
    where: "",
    text: plain(meaning),
    also: also.join(", "),
  }));

const pageEntry = ({ name, title, description }: SitePage): Entry => ({
  id: `${name}.html`,
  kind: "page",
  title,
  where: "",
  text: description,
  also: "",
});

/** Everything in the course that can be found. */
function searchEntries(chapters: readonly Chapter[], pages: readonly SitePage[]): Entry[] {
  return [...placesOf(chapters).map(chapterEntry), ...wordEntries(), ...pages.map(pageEntry)];
}

export function searchData(entries: readonly Entry[]): SearchData {
  const engine = new MiniSearch<Entry>(indexOptions);
  engine.addAll(entries);
  return { index: engine.toJSON(), names: glossary().map(({ name, also }) => [name, ...also]) };
}

/** Writes the index as a classic script, which a page opened as a file can load too. */
export function writeSearchIndex(
  out: string,
  chapters: readonly Chapter[],
  pages: readonly SitePage[],
): void {
  const data = JSON.stringify(searchData(searchEntries(chapters, pages)));
  writeFileSync(`${out}/search-index.js`, `rollbook.searchData=${data};`);
}

import MiniSearch from "minisearch";
import { type Entry, indexOptions, type SearchData } from "./index-of.js";
import { waysToSay } from "./ways-to-say.js";

export interface Found extends Entry {
  readonly score: number;
  /** The words of the entry that answer the query, folded. */
  readonly matched: readonly string[];
}

/** What is found under another name counts less than what is found under the name that was asked for. */
const otherName = 0.6;
/** How many of the words of a longer question an answer must have, where none has them all. */
const mostOf = 2 / 3;
const longQuestion = 3; // words
const mostShown = 25;

interface Raw extends Found {
  readonly terms: readonly string[];
  readonly queryTerms: readonly string[];
}

/** Of what has any word of a longer question, what has most of them. */
function answersToMost(found: readonly Raw[], asked: readonly string[]): Found[] {
  if (asked.length < longQuestion) return [];
  return found
    .filter(({ queryTerms }) => new Set(queryTerms).size >= mostOf * asked.length)
    .map(({ terms, queryTerms, ...entry }) => ({
      ...entry,
      score: entry.score * new Set(queryTerms).size,
      matched: terms,
    }));
}

/** A search through the course: each answer has all words of the query, under one name or another. */
export function searcher({ index, names }: SearchData): (query: string) => Found[] {
  const engine = MiniSearch.loadJS<Entry>(index as never, indexOptions);
  const search = (words: readonly string[], combineWith: "AND" | "OR", fuzzy = 0) =>
    engine.search(words.join(" "), { combineWith, fuzzy }) as unknown as Raw[];

  return (query) => {
    const ways = waysToSay(query, names);
    const found = new Map<string, Found>();
    ways.forEach((words, way) => {
      for (const { terms, ...entry } of search(words, "AND")) {
        const score = entry.score * (way === 0 ? 1 : otherName);
        if ((found.get(entry.id)?.score ?? 0) < score) {
          found.set(entry.id, { ...entry, score, matched: terms });
        }
      }
    });
    const spelled = () =>
      search(ways[0] ?? [], "AND", 0.25).map(({ terms, ...entry }) => ({
        ...entry,
        matched: terms,
      }));
    const nearly = () => answersToMost(search(ways[0] ?? [], "OR"), ways[0] ?? []);
    const whole = found.size > 0 ? [...found.values()] : spelled();
    const answers = whole.length > 0 ? whole : nearly();
    return answers.sort((a, b) => b.score - a.score).slice(0, mostShown);
  };
}

import type { Term } from "./glossary.js";
import { type MakeToken, type Markdown, type Token, textRule } from "./text-rule.js";

/** Words of the glossary that a chapter has not used yet; a word that is used is taken out. */
export type OpenTerms = Map<string, string>;

/** The words of the glossary with the anchors of their entries, the longest first: “roll centre height” before “roll centre”. */
export function openTerms(terms: readonly Term[]): OpenTerms {
  const pairs = terms.map(({ name, id }) => [name.toLowerCase(), id] as const);
  return new Map(pairs.sort(([a], [b]) => b.length - a.length));
}

const isLetter = (character: string | undefined): boolean => /[\p{L}\p{N}-]/u.test(character ?? "");

/** Where a word stands by itself in a text, its plural too. */
function placeOf(text: string, word: string): { at: number; length: number } | undefined {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    const plural = text[at + word.length] === "s" ? 1 : 0;
    const length = word.length + plural;
    if (!isLetter(text[at - 1]) && !isLetter(text[at + length])) return { at, length };
  }
  return undefined;
}

/** The first word of a text that is still open; of two at one place the longer. */
function firstIn(text: string, open: OpenTerms) {
  const lower = text.toLowerCase();
  const found = [...open].flatMap(([word, id]) => {
    const place = placeOf(lower, word);
    return place ? [{ word, id, ...place }] : [];
  });
  return found.sort((a, b) => a.at - b.at || b.length - a.length)[0];
}

/** A text as tokens, in which the words that are still open are links. */
function linked(token: Token, open: OpenTerms, make: MakeToken): Token[] {
  const made: Token[] = [];
  const text = (content: string) => {
    const one = make("text");
    one.content = content;
    if (content !== "") made.push(one);
  };
  let rest = token.content;
  for (let next = firstIn(rest, open); next; next = firstIn(rest, open)) {
    open.delete(next.word);
    text(rest.slice(0, next.at));
    const start = make("link_open", "a", 1);
    start.attrs = [
      ["class", "term"],
      ["href", `words.html#${next.id}`],
    ];
    made.push(start);
    text(rest.slice(next.at, next.at + next.length));
    made.push(make("link_close", "a", -1));
    rest = rest.slice(next.at + next.length);
  }
  text(rest);
  return made;
}

/** Links each word of `env.terms` where a chapter first uses it. */
export const termLinks = (markdown: Markdown): void =>
  textRule(markdown, "term_links", ({ terms }) => {
    const open = terms as OpenTerms | undefined;
    return open && ((token, make) => linked(token, open, make));
  });

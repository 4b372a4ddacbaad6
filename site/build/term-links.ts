import type MarkdownIt from "markdown-it";
import type { Term } from "./glossary.js";

type Markdown = InstanceType<typeof MarkdownIt>;
type Token = ReturnType<Markdown["parse"]>[number];

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
function linked(
  token: Token,
  open: OpenTerms,
  make: (type: string, tag: string, nesting: -1 | 0 | 1) => Token,
): Token[] {
  const made: Token[] = [];
  const text = (content: string) => {
    const one = make("text", "", 0);
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

/** Links each word of `env.terms` where a chapter first uses it; headings, links, formulas and code are left alone. */
export function termLinks(markdown: Markdown): void {
  markdown.core.ruler.push("term_links", ({ tokens, env, Token: Made }) => {
    const open = env.terms as OpenTerms | undefined;
    if (open === undefined) return;
    tokens.forEach((block, index) => {
      if (block.type !== "inline" || tokens[index - 1]?.type === "heading_open") return;
      let inLink = false;
      block.children = (block.children ?? []).flatMap((token) => {
        if (token.type === "link_open") inLink = true;
        if (token.type === "link_close") inLink = false;
        const isText = token.type === "text" && !inLink;
        return isText ? linked(token, open, (...made) => new Made(...made)) : [token];
      });
    });
  });
}

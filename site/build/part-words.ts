import type { Part } from "../cells/marks.js";
import { type MakeToken, type Markdown, type Token, textRule } from "./text-rule.js";

/** Words that name a part of the living car. */
const NAMES: readonly (readonly [Part, RegExp])[] = [
  ["springs", /\b(?:springs?|coils?)\b/i],
  ["bar", /\bbars?\b/i],
  ["dampers", /\bdampers?\b/i],
  ["links", /\blinks?\b/i],
  ["tyres", /\btyres?\b/i],
];

/** The first word of a text that names a part not named before. */
function firstIn(text: string, named: ReadonlySet<Part>) {
  const found = NAMES.flatMap(([part, pattern]) => {
    const [match] = named.has(part) ? [null] : [pattern.exec(text)];
    return match ? [{ part, at: match.index, word: match[0] }] : [];
  });
  return found.sort((a, b) => a.at - b.at)[0];
}

/** A text as tokens, in which each part's first mention stands apart. */
function apart(token: Token, named: Set<Part>, make: MakeToken): Token[] {
  const made: Token[] = [];
  const put = (type: string, content: string, part?: Part) => {
    const one = make(type);
    one.content = content;
    if (part !== undefined) one.info = part;
    if (content !== "") made.push(one);
  };
  let rest = token.content;
  for (let next = firstIn(rest, named); next; next = firstIn(rest, named)) {
    named.add(next.part);
    put("text", rest.slice(0, next.at));
    put("part_word", next.word, next.part);
    rest = rest.slice(next.at + next.word.length);
  }
  put("text", rest);
  return made;
}

/** Lets the first word of each paragraph that names a part of a car carry that part's tone, wherever `env.partWords` is set. */
export function partWords(markdown: Markdown): void {
  textRule(markdown, "part_words", (env) => {
    if (env.partWords !== true) return undefined;
    const named = new Set<Part>();
    return (token, make) => apart(token, named, make);
  });
  markdown.renderer.rules.part_word = (tokens, index) => {
    const { info, content = "" } = tokens[index] ?? {};
    return `<span class="part-word" data-part="${info}">${content}</span>`;
  };
}

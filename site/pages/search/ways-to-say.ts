import { fold } from "./fold.js";

const most = 12;

function startOf(words: readonly string[], within: readonly string[]): number {
  return within.findIndex((_, start) => words.every((word, i) => within[start + i] === word));
}

/** The query with one name in it replaced by another that means the same; the words themselves first. */
export function waysToSay(query: string, names: readonly (readonly string[])[]): string[][] {
  const asked = fold(query);
  const ways = [asked];
  for (const family of names) {
    const folded = family.map(fold);
    const said = folded.find((name) => name.length > 0 && startOf(name, asked) >= 0);
    if (!said) continue;
    const start = startOf(said, asked);
    for (const other of folded) {
      if (other !== said) ways.push(asked.toSpliced(start, said.length, ...other));
    }
  }
  return ways.slice(0, most);
}

import { fold } from "./fold.js";

const most = 12;

/** Words that make a question of a query and name nothing. */
const asking = new Set(
  fold(
    "a an and are at be can could did do does for from get has have how i if in into is it my me of on " +
      "or shall should so that the there they this to was what when where which who why will with would you your",
  ),
);

/** The words of a query that name something; all of them where none does. */
export function named(query: string): string[] {
  const words = fold(query);
  const naming = words.filter((word) => !asking.has(word));
  return naming.length > 0 ? naming : words;
}

function startOf(words: readonly string[], within: readonly string[]): number {
  return within.findIndex((_, start) => words.every((word, i) => within[start + i] === word));
}

/** The query with one name in it replaced by another that means the same; the words themselves first. */
export function waysToSay(query: string, names: readonly (readonly string[])[]): string[][] {
  const asked = fold(query);
  const ways = [named(query)];
  for (const family of names) {
    const folded = family.map(fold);
    const said = folded.find((name) => name.length > 0 && startOf(name, asked) >= 0);
    if (!said) continue;
    const start = startOf(said, asked);
    for (const other of folded) {
      if (other !== said) ways.push(named(asked.toSpliced(start, said.length, ...other).join(" ")));
    }
  }
  return ways.slice(0, most);
}

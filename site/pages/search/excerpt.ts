import { fold } from "./fold.js";

/** A stretch of text; `hit` where it is what was looked for. */
interface Piece {
  readonly text: string;
  readonly hit: boolean;
}

const before = 60;
const length = 220;

/** Some words of the text around the first that matched, the matches marked. */
export function excerpt(text: string, matched: readonly string[]): Piece[] {
  const words = [...text.matchAll(/[\p{L}\p{N}]+|[^\p{L}\p{N}]+/gu)].map(([word]) => {
    const [folded = ""] = fold(word);
    return { text: word, hit: folded !== "" && matched.includes(folded) };
  });
  const first = Math.max(
    0,
    words.findIndex(({ hit }) => hit),
  );
  const startAt = words.slice(0, first).reduce((sum, word) => sum + word.text.length, 0);
  let at = 0;
  const shown = words.filter((word) => {
    at += word.text.length;
    return at > startAt - before && at <= startAt - before + length;
  });
  const lead: Piece[] = shown[0] === words[0] ? [] : [{ text: "… ", hit: false }];
  const tail: Piece[] = shown.at(-1) === words.at(-1) ? [] : [{ text: " …", hit: false }];
  return [...lead, ...shown, ...tail];
}

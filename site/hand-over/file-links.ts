import { seedFrom } from "@rollbook/lib";
import { LONGEST_CODE } from "./entries-in-codes.js";

/** A piece of a packed file: which file, which of how many, and its letters. */
export interface Piece {
  readonly of: string;
  readonly number: number;
  readonly count: number;
  readonly letters: string;
}

/** What the end of an address brings: a whole packed file, or a piece of one. */
export type BroughtFile = { readonly letters: string } | Piece;

/** The most codes for one file: more, nobody points a camera at. */
export const MOST_CODES = 24;

/** The end of a link that brings a whole packed file. */
export const linkEndOf = (letters: string): string => `#take?file=${letters}`;

/** Ends of links that bring a packed file in pieces that fit a code each; none where they would be too many. */
export function codeEndsOf(letters: string, longest = LONGEST_CODE): string[] {
  const count = Math.ceil(letters.length / longest);
  if (count > MOST_CODES) return [];
  if (count <= 1) return [linkEndOf(letters)];
  const of = markOf(letters);
  const length = Math.ceil(letters.length / count);
  return Array.from({ length: count }, (_, i) => {
    const piece = letters.slice(i * length, (i + 1) * length);
    return `#take?piece=${of}.${i + 1}.${count}.${piece}`;
  });
}

/** What the end of an address brings; nothing where it brings no file. */
export function broughtIn(hash: string): BroughtFile | undefined {
  const [, whole] = /^#take\?file=([\w-]+)$/.exec(hash) ?? [];
  if (whole !== undefined) return { letters: whole };
  const found = /^#take\?piece=([\w-]{1,12})\.(\d{1,2})\.(\d{1,2})\.([\w-]+)$/.exec(hash);
  const [, of = "", n, m, letters = ""] = found ?? [];
  const [number, count] = [Number(n), Number(m)];
  if (!found || number < 1 || number > count || count > MOST_CODES) return undefined;
  return { of, number, count, letters };
}

/** The letters of a file whose pieces are all here, whichever came first; else nothing. */
export function joined(pieces: readonly Piece[]): string | undefined {
  const count = pieces[0]?.count ?? 0;
  const letters = Array.from(
    { length: count },
    (_, i) => pieces.find(({ number }) => number === i + 1)?.letters,
  );
  if (count === 0 || letters.includes(undefined)) return undefined;
  const whole = letters.join("");
  return markOf(whole) === pieces[0]?.of ? whole : undefined;
}

/** A mark that pieces of one file share, thirty-two bits of it in letters. */
export const markOf = (letters: string): string => seedFrom(letters).toString(36);

import { documentOf } from "@rollbook/page";
import { broughtIn, type Piece } from "../hand-over/file-links.js";

const MOST = 72; // pieces: three files of the most codes

/** Pieces of files that came by code and wait for the others. */
export const pieces = documentOf<readonly Piece[]>({
  key: "file-pieces",
  empty: [],
  read: (kept) => (Array.isArray(kept) ? kept.flatMap(asPiece).slice(-MOST) : undefined),
});

function asPiece(value: unknown): Piece[] {
  const { of, number, count, letters } = (value ?? {}) as Partial<Record<keyof Piece, unknown>>;
  if ([of, letters].some((text) => typeof text !== "string")) return [];
  const read = broughtIn(`#take?piece=${of}.${number}.${count}.${letters}`);
  return read !== undefined && "of" in read ? [read] : [];
}

/** Keeps a piece beside those that are here; gives all of its file. */
export async function keepPiece(piece: Piece): Promise<readonly Piece[]> {
  await pieces.open();
  const others = pieces.now.value.filter(
    ({ of, number }) => of !== piece.of || number !== piece.number,
  );
  void pieces.set([...others, piece].slice(-MOST));
  return pieces.now.value.filter(({ of }) => of === piece.of);
}

/** Lets the pieces of a file go. */
export const dropPieces = (of: string): Promise<boolean> =>
  pieces.set(pieces.now.value.filter((piece) => piece.of !== of));

/** A cell as the kernel ran it: JavaScript that finds what other cells made in `exports`. */
export interface Piece {
  readonly code: string;
  readonly isAsync: boolean;
  /** Names that it gives to later cells. */
  readonly makes: ReadonlySet<string>;
  /** Names that it may take from earlier ones. */
  readonly takes: ReadonlySet<string>;
  readonly imports: readonly string[];
}

const firstOf = (found: IterableIterator<RegExpMatchArray>): string[] =>
  [...found].map(([, name = ""]) => name);

const imported =
  /^Object\.defineProperty\(exports, "(\w+)", \{ enumerable: true, get: function \(\) \{ return [\w.]+; \} \}\);\n/gm;
const announced = /^(?:exports\.\w+ = )+void 0;\n/gm;

export function pieceOf(text: string, isAsync: boolean): Piece {
  const code = text.replace(announced, "");
  const makes = [
    ...firstOf(code.matchAll(/\bexports\.(\w+) =(?!=)/g)),
    ...firstOf(code.matchAll(imported)),
  ];
  return {
    code,
    isAsync,
    makes: new Set(makes),
    takes: new Set(firstOf(code.matchAll(/\bexports\.(\w+)\b(?! =(?!=))/g))),
    imports: firstOf(code.matchAll(/\brequire\("([^"]+)"\)/g)),
  };
}

/** The last of these pieces with all that made what it takes, in the order in which they ran. */
export function neededBy(pieces: readonly Piece[]): Piece[] {
  const needed = new Set<number>();
  const add = (index: number): void => {
    if (index < 0 || needed.has(index)) return;
    needed.add(index);
    for (const name of pieces[index]?.takes ?? [])
      add(pieces.slice(0, index).findLastIndex(({ makes }) => makes.has(name)));
  };
  add(pieces.length - 1);
  return pieces.filter((_, index) => needed.has(index));
}

/** The piece as a function, without what it imports for others alone; nothing in it ends a script. */
function functionOf({ code, isAsync }: Piece, wanted: ReadonlySet<string>): string {
  const own = code
    .replace(imported, (line, name) => (wanted.has(name) ? line : ""))
    .replaceAll("</", "<\\/")
    .replaceAll("<!--", "<\\!--");
  return `${isAsync ? "async " : ""}function(exports, require) {\n${own}\n}`;
}

/** The functions that, run in this order, do again what the last piece did. */
export function functionsFor(pieces: readonly Piece[]): string[] {
  const needed = neededBy(pieces);
  const wanted = new Set(needed.flatMap(({ takes }) => [...takes]));
  return needed.map((piece) => functionOf(piece, wanted));
}

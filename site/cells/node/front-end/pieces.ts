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
  /^Object\.defineProperty\(exports, "(\w+)", \{ enumerable: true, get: function \(\) \{ return (\w+)\.(\w+); \} \}\);\n/gm;
const announced = /^(?:exports\.\w+ = )+void 0;\n/gm;

/** All names that are imported from one package in a line, where the compiler writes a line for each. */
function inOneLine(code: string): string {
  const names = new Map<string, string[]>();
  for (const [, name = "", from = "", there = ""] of code.matchAll(imported))
    names.set(from, [...(names.get(from) ?? []), `${name}: ${from}.${there}`]);
  let short = code.replace(imported, "");
  for (const [from, all] of names)
    short = short.replace(
      new RegExp(`^const ${from} = .*\n`, "m"),
      (line) => `${line}Object.assign(exports, { ${all.join(", ")} });\n`,
    );
  return short;
}

export function pieceOf(text: string, isAsync: boolean): Piece {
  const code = text.replace(announced, "");
  const makes = [
    ...firstOf(code.matchAll(/\bexports\.(?!tsLastExpr\b)(\w+) =(?!=)/g)),
    ...firstOf(code.matchAll(imported)),
  ];
  return {
    code: inOneLine(code),
    isAsync,
    makes: new Set(makes),
    takes: new Set(firstOf(code.matchAll(/\bexports\.(\w+)\b(?! =(?!=))/g))),
    imports: firstOf(code.matchAll(/\brequire\("([^"]+)"\)/g)),
  };
}

/** What a cell needs of what ran before it. */
interface Needed {
  /** Indexes of the cells to run again, in their order; the last is the cell itself. */
  readonly indexes: readonly number[];
  /** Whether each name stood for one thing all the while: what was made since would show in older cells. */
  readonly isPlain: boolean;
}

/** The last piece with all that made what it takes: before it ran, and since, for what is looked up later. */
export function neededBy(pieces: readonly Piece[]): Needed {
  const needed = new Set<number>();
  let isPlain = true;
  const makerBefore = (end: number, name: string): number =>
    pieces.slice(0, end).findLastIndex(({ makes }) => makes.has(name));
  const add = (index: number): void => {
    if (index < 0 || needed.has(index)) return;
    needed.add(index);
    for (const name of pieces[index]?.takes ?? []) {
      const [then, now] = [makerBefore(index, name), makerBefore(pieces.length, name)];
      if (then >= 0 && then !== now) isPlain = false;
      add(then);
      add(now);
    }
  };
  add(pieces.length - 1);
  return { indexes: [...needed].sort((a, b) => a - b), isPlain };
}

/** The piece as a function; nothing in it ends the script that it stands in. */
function functionOf({ code, isAsync }: Piece): string {
  const own = code.replaceAll("</", "<\\/").replaceAll("<!--", "<\\!--");
  return `${isAsync ? "async " : ""}function(exports, require) {\n${own}\n}`;
}

/** What runs again to do what the last piece did, as a script writes it. */
export function cellsFor(pieces: readonly Piece[]): { cells: string; isPlain: boolean } {
  const { indexes, isPlain } = neededBy(pieces);
  const cells = indexes.flatMap((index) => {
    const piece = pieces[index];
    return piece ? [`[${index}, "${[...piece.makes].join(" ")}", ${functionOf(piece)}]`] : [];
  });
  return { cells: `[${cells.join(",\n")}]`, isPlain };
}

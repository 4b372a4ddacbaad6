import { CellFault, stripTypes } from "./strip-types.js";

/** A cell as it stands in the editor. */
interface EditedCell {
  readonly id: string;
  readonly source: string;
}

/** Where something is: the cell's index, and the line inside it counted from 1. */
export interface Place {
  readonly cell: number;
  readonly line: number;
}

/** The script of a run, and the way back from its lines to the cells. */
export interface RunScript {
  readonly text: string;
  placeOf(line: number): Place | undefined;
}

/** A cell that cannot be read, and where. */
export class UnreadableCell extends Error {
  constructor(
    readonly place: Place,
    message: string,
  ) {
    super(message);
  }
}

function stripped(source: string, cell: number): string {
  try {
    return stripTypes(source);
  } catch (fault) {
    if (fault instanceof CellFault)
      throw new UnreadableCell({ cell, line: fault.line }, fault.message);
    throw fault;
  }
}

const linesIn = (text: string): number => text.split("\n").length;

/**
 * The runtime with all cells behind it as one function, each announced by its index.
 *
 * @throws UnreadableCell
 */
export function runScript(runtime: string, cells: readonly EditedCell[]): RunScript {
  const head = `${runtime}\ntakeCells((rollbookRequire, rollbookCell) => { "use strict";`;
  const starts: number[] = [];
  let [text, next] = [head, linesIn(head) + 1];
  cells.forEach(({ source }, index) => {
    const lines = stripped(source, index);
    text += `\n;rollbookCell(${index});\n${lines}`;
    starts.push(next + 1);
    next += 1 + linesIn(lines);
  });
  return {
    text: `${text}\n});\n`,
    placeOf(line) {
      const cell = starts.findLastIndex((start) => start <= line);
      return cell < 0 || line >= next ? undefined : { cell, line: line - (starts[cell] ?? 0) + 1 };
    },
  };
}

/** The innermost place in a cell that an error's stack names. */
export function placeInStack(stack: string, { placeOf }: Pick<RunScript, "placeOf">) {
  for (const [, line] of stack.matchAll(/:(\d+):\d+\)?$/gm)) {
    const place = placeOf(Number(line));
    if (place) return place;
  }
  return undefined;
}

import { describe, expect, it } from "vitest";
import { cellsFor, neededBy, pieceOf } from "../../../site/cells/node/front-end/pieces.js";

/** Cells as tslab 1.0.22 compiles them: what is declared is put into `exports`, what is earlier is taken from it. */
const piece = (code: string) => pieceOf(code, false);
const tools = piece(`Object.defineProperty(exports, "__esModule", { value: true });
exports.worked = exports.figure = void 0;
const cells_1 = require("@rollbook/cells");
Object.defineProperty(exports, "figure", { enumerable: true, get: function () { return cells_1.figure; } });
Object.defineProperty(exports, "worked", { enumerable: true, get: function () { return cells_1.worked; } });
`);
const turn = (value: number) => piece(`const turn = ${value};\nexports.turn = turn;\n`);
const moved = piece("const moved = () => 2 * exports.turn;\nexports.moved = moved;\n");
const other = piece("const other = 1;\nexports.other = other;\n");
const shown = piece(
  "exports.tsLastExpr = exports.figure({ says: () => String(exports.moved()) });\n",
);

describe("what a cell takes along into a front end", () => {
  it("is what made its names, in the order in which it ran, and nothing else", () => {
    const { indexes, isPlain } = neededBy([tools, turn(7), other, moved, shown]);
    expect(indexes).toEqual([0, 1, 3, 4]);
    expect(isPlain).toBe(true);
  });

  it("is, of a cell that was run again, both what older cells saw and what they see now", () => {
    const { indexes, isPlain } = neededBy([tools, turn(7), moved, turn(9), shown]);
    expect(indexes).toEqual([0, 1, 2, 3, 4]);
    expect(isPlain).toBe(false);
    const { cells } = cellsFor([tools, turn(7), moved, turn(9), shown]);
    const said: string[] = [];
    const made: Record<string, unknown> = {};
    const figure = ({ says }: { says: () => string }) => said.push(says());
    type Cell = readonly [number, string, (exports: object, require: () => object) => void];
    for (const [, , work] of new Function(`return ${cells}`)() as Cell[])
      work(made, () => ({ figure }));
    expect(said).toEqual(["18"]); // by hand: 2 × 9
  });

  it("is only the later of two whole runs", () => {
    const run = [tools, turn(7), moved, shown];
    expect(neededBy([...run, ...run])).toEqual({ indexes: [4, 5, 6, 7], isPlain: true });
  });

  it("never ends the script that carries it", () => {
    const text = piece('exports.text = "</script><!-- -->";\n');
    const { cells } = cellsFor([text]);
    expect(cells).not.toMatch(/<\/|<!--/);
    const made = { text: "" };
    new Function(`return ${cells}`)()[0][2](made);
    expect(made.text).toBe("</script><!-- -->");
  });
});

import { describe, expect, it } from "vitest";
import {
  placeInStack,
  runScript,
  type UnreadableCell,
} from "../../../site/workbench/model/script.js";

const runtime = "one;\ntwo;";
const cells = [
  { id: "a", source: "first;\nsecond;" },
  { id: "b", source: "third;" },
];

describe("the script of a run", () => {
  it("finds the way back from each of its lines to cell and line", () => {
    const { text, placeOf } = runScript(runtime, cells);
    const lines = text.split("\n");
    const placeOfLine = (line: string) => placeOf(lines.indexOf(line) + 1);
    expect(placeOfLine("first;")).toEqual({ cell: 0, line: 1 });
    expect(placeOfLine("second;")).toEqual({ cell: 0, line: 2 });
    expect(placeOfLine("third;")).toEqual({ cell: 1, line: 1 });
    expect(placeOfLine("two;")).toBeUndefined();
    expect(placeOf(lines.length + 5)).toBeUndefined();
    expect(placeOf(Number.NaN)).toBeUndefined();
  });

  it("finds the innermost line of a cell in a stack, in the way each browser writes it", () => {
    const script = runScript(runtime, cells);
    const line = script.text.split("\n").indexOf("second;") + 1;
    const chromium = `Error: x\n    at f (blob:null/1:2:30)\n    at blob:null/1:${line}:4\n    at run (blob:null/1:1:9)`;
    const others = `f@blob:null/1:2:30\n@blob:null/1:${line}:4`;
    expect(placeInStack(chromium, script)).toEqual({ cell: 0, line: 2 });
    expect(placeInStack(others, script)).toEqual({ cell: 0, line: 2 });
    expect(placeInStack("", script)).toBeUndefined();
  });

  it("names the cell that cannot be read", () => {
    const broken = [...cells, { id: "c", source: "fine;\nconst = 1;" }];
    try {
      runScript(runtime, broken);
      expect.unreachable();
    } catch (fault) {
      expect((fault as UnreadableCell).place).toEqual({ cell: 2, line: 2 });
    }
  });
});

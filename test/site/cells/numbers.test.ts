import { afterEach, describe, expect, it } from "vitest";
import { area, arrow, dot, label, line } from "../../../site/cells/marks.js";
import { tablesOf as tablesWithHardSpaces } from "../../../site/cells/numbers.js";
import { reader } from "../../../site/cells/reader.js";

/** Between a number and its unit stands a space that does not break. */
const tablesOf: typeof tablesWithHardSpaces = (panel, marks) =>
  JSON.parse(JSON.stringify(tablesWithHardSpaces(panel, marks)).replaceAll("\u00a0", " "));

const draw = () => [];
const chart = {
  x: { label: "lateral acceleration", quantity: "acceleration", domain: [0, 8] },
  y: { label: "load", quantity: "force", domain: [0, 4000] },
  draw,
} as const;
const named = {
  x: {
    label: "phase",
    quantity: "count",
    domain: [0.4, 2.6],
    names: [
      [1, "in"],
      [2, "out"],
    ],
  },
  y: { label: "margin", quantity: "acceleration", domain: [-1, 1] },
  draw,
} as const;
const bar = (x: number, from: number, to: number, tone: "front" | "rear", name = "") =>
  area(
    [
      [x - 0.2, from],
      [x - 0.2, to],
      [x + 0.2, to],
      [x + 0.2, from],
    ],
    tone,
    name,
  );

afterEach(() => {
  reader.units = "metric";
});

describe("a chart in numbers", () => {
  const straight = [0, 4, 8].map((x) => [x, 500 * x] as const);

  it("reads each curve at calm places along its axis, between its points too", () => {
    const part = [2, 3, 6].map((x) => [x, 100 * x] as const);
    expect(
      tablesOf(chart, [line(straight, "outside"), line(part, "accent", { name: "set" })]),
    ).toEqual([
      {
        head: ["lateral acceleration", "outside", "set"],
        rows: [
          ["0 m/s²", "0 N", "–"],
          ["2 m/s²", "1000 N", "200 N"],
          ["4 m/s²", "2000 N", "400 N"],
          ["6 m/s²", "3000 N", "600 N"],
          ["8 m/s²", "4000 N", "–"],
        ],
      },
    ]);
  });

  it("calls a single curve what its axis says, and leaves out lines that only mark a place", () => {
    const upright = line(
      [
        [3, 0],
        [3, 4000],
      ],
      "warn",
    );
    const [table] = tablesOf(chart, [upright, line(straight, "ink")]);
    expect(table?.head).toEqual(["lateral acceleration", "load"]);
  });

  it("speaks in the reader's units", () => {
    reader.units = "us";
    const [table] = tablesOf(chart, [line(straight, "ink")]);
    // 0.8 × 9.80665 m/s² × 500 kg = 3922.66 N = 3922.66 / 4.448222 lbf
    expect(table?.rows.at(-1)).toEqual(["0.8 g", "881.8 lbf"]);
  });

  it("gives bars by their names: from zero by their end, others from where to where", () => {
    const marks = [
      bar(0.8, 0, -0.5, "front"),
      bar(1.2, 0, 0.25, "rear"),
      bar(2, 0.25, 0.5, "rear"),
    ];
    expect(tablesOf(named, marks)).toEqual([
      {
        head: ["phase", "front", "rear"],
        rows: [
          ["in", "−0.50 m/s²", "0.25 m/s²"],
          ["out", "–", "0.25 m/s² to 0.50 m/s²"],
        ],
      },
    ]);
  });

  it("gives the dots, by what they are called where that differs", () => {
    const [table] = tablesOf(chart, [
      dot([5, 1234], "front"),
      dot([5, 999], "ink", "", "above", "peak"),
    ]);
    expect(table).toEqual({
      head: ["marked", "lateral acceleration", "load"],
      rows: [
        ["front", "5.00 m/s²", "1234 N"],
        ["peak", "5.00 m/s²", "999 N"],
      ],
    });
    expect(tablesOf(named, [dot([2, 0.125], "front")])).toEqual([
      { head: ["phase", "margin"], rows: [["out", "0.13 m/s²"]] },
    ]);
  });
});

describe("a drawing in numbers", () => {
  it("says what is written in it and where", () => {
    const drawing = { view: { x: [-1, 1], y: [0, 1] }, label: "a car", draw } as const;
    const marks = [
      arrow([-0.9, 0.1], [-0.9, 0.3], "inside", "2708 N"),
      label([0, 0.5], "centre of gravity"),
      label([0.9, 0.9], "outside 7883 N", "outside"),
    ];
    expect(tablesOf(drawing, marks)).toEqual([
      {
        head: ["written in the drawing", "where"],
        rows: [
          ["2708 N", "inside, lower left"],
          ["centre of gravity", "centre"],
          ["outside 7883 N", "upper right"],
        ],
      },
    ]);
  });

  it("has no table where nothing is written", () => {
    const drawing = { view: { x: [0, 1], y: [0, 1] }, label: "a wheel", draw } as const;
    expect(tablesOf(drawing, [bar(0.5, 0, 1, "front")])).toEqual([]);
  });
});

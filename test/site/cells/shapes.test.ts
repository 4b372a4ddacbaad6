import { describe, expect, it } from "vitest";
import { area, arrow, curve, dot, label, line } from "../../../site/cells/marks.js";
import { shapesOf } from "../../../site/cells/shapes.js";

const frame = { width: 200, x: (value: number) => 10 * value, y: (value: number) => 100 - value };

describe("marks as SVG elements", () => {
  it("draws a line through its points and writes its label at the last", () => {
    const [path, text] = shapesOf(
      line(
        [
          [0, 0],
          [5, 50],
        ],
        "front",
        { label: "front" },
      ),
      frame,
    );
    expect(path?.attributes.d).toBe("M0 100l50-50");
    expect(text).toMatchObject({
      tag: "text",
      text: "front",
      attributes: { x: "59.0", y: "54.0" },
    });
  });

  it("leaves a gap where a coordinate is no number, and never writes NaN", () => {
    const holed = line(
      [
        [0, 0],
        [1, Number.NaN],
        [2, 20],
        [3, 30],
      ],
      "rear",
    );
    expect(shapesOf(holed, frame)[0]?.attributes.d).toBe("M0 100M20 80l10-10");
    for (const mark of [
      dot([Number.NaN, 1], "ink"),
      label([1, Number.NaN], "x"),
      arrow([0, 0], [Number.NaN, 1], "ink"),
    ]) {
      expect(shapesOf(mark, frame)).toEqual([]);
    }
  });

  it("ends a long outline where it ends, although it goes on by differences", () => {
    const steps = Array.from({ length: 1000 }, (_, i) => [-i / 300, i / 700] as const);
    const [start, ...moves] = [
      ...(shapesOf(line(steps, "front"), frame)[0]?.attributes.d ?? "").matchAll(
        /(-?[\d.]+) ?(-?[\d.]+)/g,
      ),
    ].map(([, x, y]) => [Number(x), Number(y)] as const);
    expect(start).toEqual([0, 100]);
    const [x, y] = moves.reduce(([px, py], [dx, dy]) => [px + dx, py + dy], start ?? [0, 0]);
    expect(Math.abs(x + (999 / 300) * 10)).toBeLessThanOrEqual(0.05 + 1e-9);
    expect(Math.abs(y - (100 - 999 / 700))).toBeLessThanOrEqual(0.05 + 1e-9);
  });

  it("tells the rear axle by dash and square, so that it does not hang on colour", () => {
    const both = curve((x) => x, [0, 1], 2);
    expect(shapesOf(line(both, "front"), frame)[0]?.attributes["stroke-dasharray"]).toBe("none");
    expect(shapesOf(line(both, "rear"), frame)[0]?.attributes["stroke-dasharray"]).toBe("8 4");
    expect(shapesOf(dot([1, 1], "front"), frame)[0]?.attributes.d).toContain("a6");
    expect(shapesOf(dot([1, 1], "rear"), frame)[0]?.attributes.d).toContain("h10");
  });

  it("keeps words inside the picture from side to side", () => {
    const [right] = shapesOf(label([20, 0], "a long label", "ink", "right"), frame);
    expect(Number(right?.attributes.x)).toBeLessThanOrEqual(200 - 12 * 8);
    const [left] = shapesOf(label([0, 0], "a long label", "ink", "left"), frame);
    expect(Number(left?.attributes.x)).toBeGreaterThanOrEqual(12 * 8);
  });

  it("closes an area and cuts it off at the frame", () => {
    const [shape] = shapesOf(
      area(
        [
          [0, 0],
          [1, 0],
          [1, 9],
        ],
        "muted",
      ),
      frame,
    );
    expect(shape?.layer).toBe("clipped");
    expect(shape?.attributes.d).toMatch(/Z$/);
  });

  it("shrinks the head of an arrow that is shorter than it", () => {
    const [shape] = shapesOf(arrow([0, 0], [0, 4], "outside"), frame);
    expect(shape?.attributes.d).toMatch(/^M0\.0 100\.0L0\.0 100\.0M/);
  });
});

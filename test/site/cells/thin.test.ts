import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point } from "../../../site/cells/marks.js";
import { thin } from "../../../site/cells/thin.js";

const gap = (points: readonly Point[], x: number, y: number): number => {
  const after = points.findIndex(([at]) => at >= x);
  const [right, left] = [points[after], points[Math.max(0, after - 1)]];
  if (!right || !left) return Infinity;
  const share = right[0] === left[0] ? 0 : (x - left[0]) / (right[0] - left[0]);
  return Math.abs(left[1] + share * (right[1] - left[1]) - y);
};

describe("a thinned polyline", () => {
  it("is two points where the line is straight", () => {
    const straight = Array.from({ length: 81 }, (_, i): Point => [i, 3 * i]);
    expect(thin(straight)).toEqual([
      [0, 0],
      [80, 240],
    ]);
  });

  it("passes every point left out within the tolerance, and keeps both ends", () => {
    const heights = fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { minLength: 1 });
    fc.assert(
      fc.property(heights, (ys) => {
        const points = ys.map((y, i): Point => [i * 4, y]);
        const kept = thin(points);
        expect(kept[0]).toEqual(points[0]);
        expect(kept.at(-1)).toEqual(points.at(-1));
        for (const [x, y] of points) expect(gap(kept, x, y)).toBeLessThanOrEqual(0.15 + 1e-9);
      }),
    );
  });

  it("keeps the corners of an outline that turns back", () => {
    const square: Point[] = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
      [0, 0],
    ];
    expect(thin(square)).toEqual(square);
  });
});

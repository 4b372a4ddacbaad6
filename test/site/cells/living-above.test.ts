import { axleLoadsOf, demoCar } from "@rollbook/lib";
import { describe, expect, test } from "vitest";
import { carFromAbove, fromAbove } from "../../../site/cells/living/above.js";
import type { LabelMark, LineMark, Point } from "../../../site/cells/marks.js";

const rest = (() => {
  const { front, rear } = axleLoadsOf(demoCar, 0);
  return { front: front.load, rear: rear.load };
})();
const load = { front: { left: 1000, right: 4000 }, rear: { left: 0, right: 5000 } };
const marks = carFromAbove(fromAbove(demoCar, load, rest));

/** Area within an outline, by the trapezoids under its sides. */
const within = (points: readonly Point[]) =>
  Math.abs(
    points.slice(1).reduce((sum, [x, y], i) => {
      const [px, py] = points[i] as Point;
      return sum + ((x - px) * (y + py)) / 2;
    }, 0),
  );
const discs = marks.filter(
  (mark): mark is LineMark =>
    mark.kind === "line" && mark.part === "loads" && mark.tone !== "muted",
);

describe("a car from above", () => {
  test("has discs as large as its loads, in the tones of their axles", () => {
    const [left, right, rearLeft, rearRight] = discs.map(({ points }) => within(points));
    expect((right ?? 0) / (left ?? 0)).toBeCloseTo(4, 9);
    expect((rearRight ?? 0) / (right ?? 0)).toBeCloseTo(5 / 4, 9);
    expect(rearLeft).toBe(0);
    expect(discs.map(({ tone }) => tone)).toEqual(["front", "front", "rear", "rear"]);
  });

  test("writes each load on its patch, and of a wheel without one that it is in the air", () => {
    const labels = marks.filter((mark): mark is LabelMark => mark.kind === "label");
    expect(labels.map(({ text }) => text.replace(/\s/, " "))).toEqual([
      ...["1000 N", "4000 N", "in the air", "5000 N"],
    ]);
    const [, right, left] = labels;
    expect(right?.at).toEqual([demoCar.front.track / 2, 0]);
    expect(left?.at).toEqual([-demoCar.rear.track / 2, -demoCar.wheelbase]);
  });
});

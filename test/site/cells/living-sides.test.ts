import { axleLoadsOf, type Car, demoCar } from "@rollbook/lib";
import { describe, expect, test } from "vitest";
import { fromAbove } from "../../../site/cells/living/above.js";
import { axleInTurn, carInTurn } from "../../../site/cells/living/seen-axle.js";
import { fromSide } from "../../../site/cells/living/side.js";
import { allRoundView, carSeenFrom, standpoints } from "../../../site/cells/living/sides.js";
import type { ArrowMark, Mark, Point } from "../../../site/cells/marks.js";

function allRound(car: Car) {
  const { front, rear } = axleLoadsOf(car, 7);
  const wheels = { front: front.load, rear: rear.load };
  return {
    behind: carInTurn(car, axleLoadsOf(car, 7)),
    inFront: axleInTurn(car, "front", axleLoadsOf(car, 7)),
    above: fromAbove(car, wheels, wheels),
    side: fromSide(car, {
      ...{ height: { front: 0.13, rear: 0.14 }, rise: { front: 0, rear: 0 }, enlarged: 1 },
      load: { front: front.load.left + front.load.right, rear: rear.load.left + rear.load.right },
    }),
  };
}

const pointsOf = (mark: Mark): readonly Point[] => {
  if ("points" in mark) return mark.points;
  return "at" in mark ? [mark.at] : [mark.from, mark.to];
};
const longest = (marks: readonly Mark[]) => {
  const arrows = marks.filter((mark): mark is ArrowMark & Mark => mark.kind === "arrow");
  return arrows.sort((a, b) => b.to[1] - b.from[1] - (a.to[1] - a.from[1]))[0];
};

describe("a car that is walked round", () => {
  test.each(standpoints)("fits into its panel from %s, short cars and long ones", (from) => {
    for (const wheelbase of [2, 2.4, 3])
      for (const mark of carSeenFrom(from, allRound({ ...demoCar, wheelbase })))
        for (const [x, y] of pointsOf(mark)) {
          expect(x).toBeGreaterThanOrEqual(allRoundView.x[0] - 0.3); // a disc may reach out
          expect(x).toBeLessThanOrEqual(allRoundView.x[1] + 0.3);
          expect(y).toBeGreaterThanOrEqual(allRoundView.y[0]);
          expect(y).toBeLessThanOrEqual(allRoundView.y[1]);
        }
  });

  test("has its outside on the right from behind, and on the left of who stands in front of it", () => {
    const car = allRound(demoCar);
    expect(longest(carSeenFrom("behind", car))?.to[0]).toBeCloseTo(1.445 / 2, 9); // half of its mean track
    expect(longest(carSeenFrom("in front", car))?.to[0]).toBeCloseTo(-1.44 / 2, 9);
  });
});

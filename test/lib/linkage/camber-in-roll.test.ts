import { expect, test } from "vitest";
import { camberInRoll } from "../../../lib/linkage/camber-in-roll.js";
import { frontViewAxle } from "../../../lib/linkage/front-view-axle.js";
import { converging, parallel, strut } from "./reference-linkages.js";

test("arms that meet 1975 mm inboard leave 1 − 750/1975 of the roll as camber", () => {
  expect(camberInRoll(converging)).toBeCloseTo(1 - 750 / 1975, 9); // two methods, line intersection
});

test("parallel arms leave all of it", () => {
  expect(camberInRoll(parallel)).toBeCloseTo(1, 9); // the wheel keeps its angle to the body
});

test.each([converging, parallel, strut])(
  "the solved axle agrees for a small roll (%#)",
  (corner) => {
    const rollAngle = 1e-4; // right side down: the right wheel is the outer one
    const { right } = frontViewAxle(corner, { rollAngle });
    expect(right.camberChange / rollAngle).toBeCloseTo(camberInRoll(corner), 2);
  },
);

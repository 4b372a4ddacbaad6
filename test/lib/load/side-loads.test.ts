import fc from "fast-check";
import { expect, test } from "vitest";
import { sideLoads } from "../../../lib/load/side-loads.js";

const car = { mass: 1000, lateralAcceleration: 6, centreOfGravityHeight: 0.5, track: 1.5 };

test("a ton in a left turn of 6 m/s² stands on 2903 N left and 6903 N right", () => {
  const { left, right } = sideLoads(car);
  expect(left).toBeCloseTo(4903.325 - 2000, 9); // by hand: 1000·6·0.5/1.5 = 2000
  expect(right).toBeCloseTo(4903.325 + 2000, 9);
});

test("past wheel lift the outside wheels carry the whole weight and no more", () => {
  expect(sideLoads({ ...car, lateralAcceleration: 20 })).toEqual({ left: 0, right: 9806.65 });
  expect(sideLoads({ ...car, lateralAcceleration: -20 })).toEqual({ left: 9806.65, right: 0 });
});

test("the sides sum to the weight and neither pulls on the road", () => {
  fc.assert(
    fc.property(fc.double({ min: -30, max: 30, noNaN: true }), (lateralAcceleration) => {
      const { left, right } = sideLoads({ ...car, lateralAcceleration });
      expect(left + right).toBeCloseTo(9806.65, 9);
      expect(Math.min(left, right)).toBeGreaterThanOrEqual(0);
    }),
  );
});

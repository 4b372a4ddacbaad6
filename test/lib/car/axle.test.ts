import { expect, test } from "vitest";
import {
  barRateOf,
  barRollStiffnessOf,
  rideRateOf,
  rollStiffnessOf,
  wheelRateOf,
} from "../../../lib/car/axle.js";
import { demoCar } from "../../../lib/car/demo-car.js";

const { front } = demoCar;

test("the demo car's front wheels feel 60 N/mm × 0.65² = 25.35 N/mm", () => {
  expect(wheelRateOf(front)).toBeCloseTo(25350, 9); // by hand
});

test("on club tyres at 200 kPa (215 N/mm) that leaves 22.676 N/mm to the road", () => {
  expect(rideRateOf(front)).toBeCloseTo((25350 * 215e3) / (25350 + 215e3), 6); // by hand
});

test("its front bar on 3 adds 22 N/mm × (0.6 × 1.44)² = 16 423 N·m/rad", () => {
  expect(barRollStiffnessOf(front)).toBeCloseTo(22e3 * (0.6 * 1.44) ** 2, 6); // by hand
});

test("springs, bar and tyres make the axle's roll stiffness", () => {
  const suspension = 0.5 * 25350 * 1.44 ** 2 + 22e3 * (0.6 * 1.44) ** 2; // by hand
  const tyres = 0.5 * 215e3 * 1.44 ** 2;
  expect(rollStiffnessOf(front)).toBeCloseTo((suspension * tyres) / (suspension + tyres), 4);
});

test("an axle without a bar has none of its stiffness", () => {
  const { bar, ...without } = front;
  expect(bar).toBeDefined();
  expect(barRollStiffnessOf(without)).toBe(0);
});

test("a bar given by its arms has the rate of its geometry", () => {
  const bar = {
    motionRatio: 1,
    position: 1,
    tube: { diameter: 0.023, length: 1.008 },
    positions: [{ armLength: 0.25 }, { armLength: 0.2 }],
  };
  expect(barRateOf({ ...bar, position: 2 })).toBeGreaterThan(barRateOf(bar));
});

test("a bar in a position it does not have is refused", () => {
  expect(() => barRateOf({ motionRatio: 1, positions: [{ rate: 1 }], position: 2 })).toThrow(
    "bar position is 2 but must be a whole number from 1 to 1.",
  );
  expect(() => barRateOf({ motionRatio: 1, positions: [{}], position: 1 })).toThrow(RangeError);
});

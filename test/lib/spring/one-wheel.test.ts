import { expect, test } from "vitest";
import { oneWheelRate } from "../../../lib/spring/one-wheel.js";
import { rollStiffnessOfBar } from "../../../lib/spring/roll-stiffness.js";

test("one wheel that rises alone meets its spring and the bar at its end", () => {
  const track = 1.5;
  const barRollStiffness = rollStiffnessOfBar({ barRate: 20e3, motionRatio: 0.5, track });
  const rate = oneWheelRate({ wheelRate: 30e3, barRollStiffness, track });
  expect(rate).toBeCloseTo(30e3 + 20e3 * 0.5 ** 2, 8); // by hand: k·i² beside the spring
});

test("without a bar it meets the spring alone", () => {
  expect(oneWheelRate({ wheelRate: 30e3, barRollStiffness: 0, track: 1.5 })).toBe(30e3);
});

test("a negative stiffness is refused", () => {
  const axle = { wheelRate: 30e3, barRollStiffness: -1, track: 1.5 };
  expect(() => oneWheelRate(axle)).toThrow("roll stiffness of the bar is -1 N·m/rad");
});

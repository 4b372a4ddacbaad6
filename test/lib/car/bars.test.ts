import { expect, test } from "vitest";
import { barRollStiffnessOf } from "../../../lib/car/axle.js";
import { axleLoadsOf } from "../../../lib/car/axle-loads.js";
import { withBarPosition, withBars } from "../../../lib/car/bars.js";
import { demoCar } from "../../../lib/car/demo-car.js";

test("a car with bars of given roll stiffness has them", () => {
  const car = withBars(demoCar, { front: 12e3, rear: 4e3 });
  expect(barRollStiffnessOf(car.front)).toBeCloseTo(12e3, 8);
  expect(barRollStiffnessOf(car.rear)).toBeCloseTo(4e3, 8);
});

test("bars of the stiffness that the car has anyway change no load", () => {
  const { front, rear } = demoCar;
  const same = { front: barRollStiffnessOf(front), rear: barRollStiffnessOf(rear) };
  const replaced = axleLoadsOf(withBars(demoCar, same), 8);
  expect(replaced.frontShare).toBeCloseTo(axleLoadsOf(demoCar, 8).frontShare, 12);
});

test("a stiffer position of the rear bar moves load transfer to the rear", () => {
  const stiffer = withBarPosition(demoCar, "rear", 4);
  expect(axleLoadsOf(stiffer, 8).frontShare).toBeLessThan(axleLoadsOf(demoCar, 8).frontShare);
});

test("a car without a bar stays as it is in its only position", () => {
  const { bar, ...front } = demoCar.front;
  expect(bar).toBeDefined();
  const car = { ...demoCar, front };
  expect(withBarPosition(car, "front", 1)).toBe(car);
});

test("a bar below zero and a position it does not have are refused", () => {
  expect(() => withBars(demoCar, { front: -1, rear: 0 })).toThrow(
    "front bar is -1 N·m/rad but must be from 0 to 1000000 N·m/rad.",
  );
  expect(() => withBarPosition(demoCar, "rear", 5)).toThrow(
    "rear bar position is 5 but must be from 1 to 4.",
  );
});

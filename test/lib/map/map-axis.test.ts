import { expect, test } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { applyChange } from "../../../lib/change/apply.js";
import { changeTo, mapAxesOf, settable } from "../../../lib/map/map-axis.js";

const axisOf = (key: string, car = demoCar) => {
  const axis = mapAxesOf(car).find((one) => one.key === key);
  if (axis === undefined) throw new Error(`no axis ${key}`);
  return axis;
};

test("every adjuster of the car and every bar is an axis, from one end of its range to the other", () => {
  expect(axisOf("front-springRate")).toMatchObject({
    name: "Front spring rate",
    min: 40e3,
    max: 90e3,
    step: 5e3,
    present: 60e3,
  });
  expect(axisOf("rear-barPosition")).toMatchObject({ min: 1, max: 4, step: 1, present: 2 });
  expect(axisOf("fuel")).toMatchObject({ name: "Fuel", min: 5, max: 45 });
});

test("a car that cannot be adjusted has no axes", () => {
  const { adjusters: _whole, ...car } = demoCar;
  const fixed = ({ adjusters: _, bar: __, ...axle }: typeof demoCar.front) => axle;
  expect(mapAxesOf({ ...car, front: fixed(car.front), rear: fixed(car.rear) })).toEqual([]);
});

test("sides that differ move together, and only as far as both can go", () => {
  const uneven = applyChange(demoCar, {
    lever: "tyrePressure",
    end: "front",
    side: "left",
    by: 20e3,
  });
  const axis = axisOf("front-tyrePressure", uneven);
  expect(axis).toMatchObject({ present: 210e3, min: 160e3, max: 240e3 });
  const { pressure } = applyChange(uneven, changeTo(axis, axis.max)).front.tyre;
  expect(pressure).toEqual({ left: 250e3, right: 230e3 });
});

test("both ends of every axis can be set on the car", () => {
  for (const axis of mapAxesOf(demoCar))
    for (const value of [axis.min, axis.max])
      expect(() => applyChange(demoCar, changeTo(axis, value)), axis.key).not.toThrow();
});

test("what is settable lies whole steps from where the car is, inside the range", () => {
  const axis = { ...axisOf("front-springRate"), present: 61e3 };
  expect(settable(axis, 63e3)).toBe(61e3);
  expect(settable(axis, 64e3)).toBe(66e3);
  expect(settable(axis, 0)).toBe(41e3);
  expect(settable(axis, 1e6)).toBe(86e3);
});

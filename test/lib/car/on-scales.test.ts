import fc from "fast-check";
import { expect, test } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { totalMassOf } from "../../../lib/car/masses.js";
import { bodyOnScales } from "../../../lib/car/on-scales.js";
import { eachAxle } from "../../../lib/load/wheels.js";
import { measuredLoadsOf } from "../../../lib/statics/measured-loads.js";
import { GRAVITY } from "../../../lib/units.js";

const readings = (car = demoCar) =>
  eachAxle(measuredLoadsOf(car), ({ left, right }) => ({
    left: left / GRAVITY,
    right: right / GRAVITY,
  }));

test("scales under a car give its body back", () => {
  const body = bodyOnScales(demoCar, readings());
  expect(body.mass).toBeCloseTo(demoCar.body.mass, 9);
  expect(body.behindFrontAxle).toBeCloseTo(demoCar.body.behindFrontAxle, 9);
  expect(body.leftOfCentre).toBeCloseTo(demoCar.body.leftOfCentre, 9);
  expect(body.height).toBe(demoCar.body.height);
});

const kilograms = fc.double({ min: 180, max: 450, noNaN: true });
const anyReadings = fc.record({
  front: fc.record({ left: kilograms, right: kilograms }),
  rear: fc.record({ left: kilograms, right: kilograms }),
});

test("the car with that body weighs what the scales show, axle by axle and side by side", () => {
  fc.assert(
    fc.property(anyReadings, ({ front, rear }) => {
      const car = { ...demoCar, body: bodyOnScales(demoCar, { front, rear }) };
      const { mass, behindFrontAxle, leftOfCentre } = totalMassOf(car);
      const rearAxle = (mass * behindFrontAxle) / car.wheelbase;
      expect(mass).toBeCloseTo(front.left + front.right + rear.left + rear.right, 6);
      expect(rearAxle).toBeCloseTo(rear.left + rear.right, 6);
      const moment =
        ((front.left - front.right) * car.front.track + (rear.left - rear.right) * car.rear.track) /
        2;
      expect(mass * leftOfCentre).toBeCloseTo(moment, 6);
    }),
  );
});

test("scales that show less than what is known to be on them are refused", () => {
  const none = { left: 50, right: 50 };
  expect(() => bodyOnScales(demoCar, { front: none, rear: none })).toThrow(
    "Sprung mass is -70 kg but must be from 200 to 2800 kg.",
  );
  const below = { left: -1, right: 300 };
  expect(() => bodyOnScales(demoCar, { front: below, rear: below })).toThrow(
    "front left scale is -1 kg but must be at least 0 kg.",
  );
});

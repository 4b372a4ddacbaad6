import { expect, test } from "vitest";
import type { CarInRoll } from "../../../lib/load/car-in-roll.js";
import { distributeLoadTransfer } from "../../../lib/load/distribution.js";
import { firstWheelLift } from "../../../lib/load/first-lift.js";
import { GRAVITY } from "../../../lib/units.js";

const axle = {
  track: 1.5,
  rollStiffness: 30e3,
  rollCentreHeight: 0.05,
  unsprungMass: 80,
  unsprungHeight: 0.3,
};
const car: CarInRoll = {
  front: axle,
  rear: { ...axle, rollStiffness: 60e3 },
  sprungMass: 900,
  sprungHeight: 0.5,
  sprungFrontShare: 0.5,
};

test("the stiffer of two axles with the same weight lifts its inside wheel first", () => {
  expect(firstWheelLift(car).axle).toBe("rear");
});

test("just below its lift the wheel is down, just above it is in the air", () => {
  const { axle: end, lateralAcceleration: lift } = firstWheelLift(car);
  expect(distributeLoadTransfer(car, lift * 0.999)[end].lifted).toBe(false);
  expect(distributeLoadTransfer(car, lift * 1.001)[end].lifted).toBe(true);
});

test("a body that its links hold upright lifts its wheels where a stiff block would", () => {
  const block = {
    ...car,
    front: { ...axle, rollCentreHeight: 0.5 },
    rear: { ...axle, rollCentreHeight: 0.5 },
  };
  const height = (900 * 0.5 + 160 * 0.3) / 1060;
  const ssf = 1.5 / (2 * height); // NHTSA rollover ratings, T/2h
  expect(firstWheelLift(block).lateralAcceleration).toBeCloseTo(ssf * GRAVITY, 9);
});

test("a car with its mass at the ground never lifts a wheel", () => {
  const flat = { ...axle, rollCentreHeight: 0, unsprungHeight: 0 };
  const low = { ...car, front: flat, rear: flat, sprungHeight: 0 };
  expect(firstWheelLift(low).lateralAcceleration).toBe(Infinity);
});

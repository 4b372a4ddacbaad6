import { expect, test } from "vitest";
import {
  characteristicSpeed,
  criticalSpeed,
  understeerGradient,
} from "../../../lib/balance/linear-understeer.js";

// Wong, Theory of Ground Vehicles, example 5.1, from memory: 20.105 kN, 2.8 m, 53.5 % in front
const weight = 20105;
const g = 9.81; // the book's
const car = (front: number) => ({
  front: { load: 0.535 * weight, corneringStiffness: 2 * front },
  rear: { load: 0.465 * weight, corneringStiffness: 2 * 38250 },
});

test("front tyres of 38.92 kN/rad give 0.015976 rad of understeer and 41.464 m/s", () => {
  const gradient = understeerGradient(car(38920));
  expect(gradient * 9.80665).toBeCloseTo(0.015976, 6);
  expect(characteristicSpeed((gradient * 9.80665) / g, 2.8)).toBeCloseTo(41.464, 1);
  expect(criticalSpeed(gradient, 2.8)).toBe(Infinity);
});

test("front tyres of 47.82 kN/rad make it oversteer, with a critical speed of 53.10 m/s", () => {
  const gradient = understeerGradient(car(47820));
  expect(gradient * 9.80665).toBeCloseTo(-0.0097416, 6);
  expect(criticalSpeed((gradient * 9.80665) / g, 2.8)).toBeCloseTo(53.1, 1);
  expect(characteristicSpeed(gradient, 2.8)).toBe(Infinity);
});

test("a car with the same slip at both ends is neutral at every speed", () => {
  const axle = { load: 5000, corneringStiffness: 1e5 };
  expect(understeerGradient({ front: axle, rear: axle })).toBe(0);
  expect(criticalSpeed(0, 2.8)).toBe(Infinity);
});

import { expect, test } from "vitest";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { yawAccelerationMargin } from "../../../lib/balance/yaw-acceleration.js";
import { demoCar } from "../../../lib/car/demo-car.js";

const car = handlingCarOf(demoCar);
const turn = { speed: 25, lateralAcceleration: 9, longitudinalAcceleration: 0 };

// by hand: mass 1080 kg, yaw inertia 1400 kg·m², wheelbase 2.4 m, all in the file of the demo car
const mass = 1080;
const behind = (810 * 1.07 + 80 * 1.35 + 30 * 2.2 + 85 * 2.4) / mass; // of the front axle, whose wheels are at 0
const perYaw = (1400 * 2.4) / (mass * behind * (2.4 - behind)); // m/s² for each rad/s²

test("a turn that gets harder takes I·j/V of yaw moment, as a margin below zero", () => {
  expect(yawAccelerationMargin(car, turn, 12)).toBeCloseTo((-perYaw * 12) / 25, 9);
});

test("a car that slows down in a turn as hard as before yaws faster too, by −ay·ax/V²", () => {
  const slowing = { ...turn, longitudinalAcceleration: -4 };
  expect(yawAccelerationMargin(car, slowing)).toBeCloseTo((-perYaw * 9 * 4) / 25 ** 2, 9);
  // the same by differences: r = ay/V a moment before and after
  const [before, after] = [9 / (25 + 4e-4), 9 / (25 - 4e-4)];
  const yawAcceleration = (after - before) / 2e-4;
  expect(yawAccelerationMargin(car, slowing)).toBeCloseTo(-perYaw * yawAcceleration, 6);
});

test("a steady turn takes nothing, and one with power on gives some back", () => {
  expect(yawAccelerationMargin(car, turn)).toBe(0);
  expect(yawAccelerationMargin(car, { ...turn, longitudinalAcceleration: 2 })).toBeGreaterThan(0);
});

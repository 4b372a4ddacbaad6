import { expect, test } from "vitest";
import {
  rideFrequency,
  springRateForFrequency,
  staticDeflection,
} from "../../../lib/spring/ride.js";

test("2 Hz on 200 kg with the spring moving 1/1.25 of the wheel needs 49 348 N/m", () => {
  // Giaraffa, Springs & Dampers, part 2 (worked example)
  const rate = springRateForFrequency({ frequency: 2, mass: 200, motionRatio: 1 / 1.25 });
  expect(rate).toBeCloseTo(49348, 0);
});

test("the spring for a frequency gives that frequency back", () => {
  const rate = springRateForFrequency({ frequency: 1.7, mass: 240, motionRatio: 0.8 });
  expect(rideFrequency(rate * 0.8 ** 2, 240)).toBeCloseTo(1.7, 12);
});

test("a car that bounces at 1 Hz sinks 248.5 mm under its own weight", () => {
  expect(staticDeflection(1)).toBeCloseTo(0.2484, 4); // Gillespie 1992, ch. 5: 9.78 in for g = 386
  expect(staticDeflection(1) / 0.0254).toBeCloseTo(9.78, 2);
});

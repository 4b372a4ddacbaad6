import fc from "fast-check";
import { expect, test } from "vitest";
import {
  lateralLoadTransfer,
  longitudinalLoadTransfer,
  staticStabilityFactor,
  wheelLiftAcceleration,
} from "../../../lib/load/transfer.js";

const car = { mass: 1000, lateralAcceleration: 5, centreOfGravityHeight: 0.5, track: 1.5 };

test("a ton at 5 m/s², half a metre up on a track of 1.5 m, moves 1667 N", () => {
  expect(lateralLoadTransfer(car)).toBeCloseTo((1000 * 5 * 0.5) / 1.5, 9); // by hand
});

test("a right turn moves the load to the left", () => {
  const right = { ...car, lateralAcceleration: -5 };
  expect(lateralLoadTransfer(right)).toBe(-lateralLoadTransfer(car));
});

test("transfer grows in proportion to mass, acceleration and height, and falls with track", () => {
  const factor = fc.double({ min: 0.5, max: 2, noNaN: true });
  fc.assert(
    fc.property(factor, (f) => {
      const base = lateralLoadTransfer(car);
      expect(lateralLoadTransfer({ ...car, mass: f * 1000 })).toBeCloseTo(f * base, 8);
      expect(lateralLoadTransfer({ ...car, lateralAcceleration: f * 5 })).toBeCloseTo(f * base, 8);
      expect(lateralLoadTransfer({ ...car, centreOfGravityHeight: f / 2 })).toBeCloseTo(
        f * base,
        8,
      );
      expect(lateralLoadTransfer({ ...car, track: f * 1.5 })).toBeCloseTo(base / f, 8);
    }),
  );
});

test("braking at 8 m/s² moves load to the front axle", () => {
  const braking = {
    mass: 1000,
    longitudinalAcceleration: -8,
    centreOfGravityHeight: 0.5,
    wheelbase: 2.5,
  };
  expect(longitudinalLoadTransfer(braking)).toBe(-1600); // by hand
});

test("a rigid car lifts its inside wheels at T/2h, as NHTSA rates it", () => {
  // NHTSA rollover ratings: a car with T = 60 in and h = 21 in has a factor of 1.43
  expect(staticStabilityFactor({ track: 1.524, centreOfGravityHeight: 0.5334 })).toBeCloseTo(
    1.43,
    2,
  );
  const lift = wheelLiftAcceleration(car);
  const half = (1000 * 9.80665) / 2;
  expect(lateralLoadTransfer({ ...car, lateralAcceleration: lift })).toBeCloseTo(half, 9);
});

test("nonsense is refused by name", () => {
  expect(() => lateralLoadTransfer({ ...car, track: 0 })).toThrow(
    "track is 0 m but must be from 0.1 to 10 m.",
  );
  expect(() => lateralLoadTransfer({ ...car, mass: Number.NaN })).toThrow(/^mass is NaN kg/);
});

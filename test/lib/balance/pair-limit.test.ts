import fc from "fast-check";
import { expect, test } from "vitest";
import { cornerSpeed } from "../../../lib/balance/corner-speed.js";
import { pairLimit } from "../../../lib/balance/pair-limit.js";

const g = 9.80665;
const pair = { mass: 540, centreOfGravityHeight: 0.5, track: 1.45 };

test("grip in proportion to load holds the same turn at any mass and height", () => {
  const low = pairLimit((load) => 1.1 * load, pair);
  const heavy = pairLimit((load) => 1.1 * load, { ...pair, mass: 700, centreOfGravityHeight: 0.6 });
  expect(low.lateralAcceleration).toBeCloseTo(1.1 * g, 8); // by hand: μ·g
  expect(heavy.lateralAcceleration).toBeCloseTo(1.1 * g, 8);
});

test("a load-sensitive pair obeys its quadratic", () => {
  const [mu0, s] = [1.3, 5e-5];
  const F = (540 * g) / 2;
  const k = (2 * 0.5) / 1.45; // transfer over mean load for each g
  // by hand: x = μ0 − sF(1 + k²x²), x in g
  const a = s * F * k ** 2;
  const x = (Math.sqrt(1 + 4 * a * (mu0 - s * F)) - 1) / (2 * a);
  const limit = pairLimit((load) => (mu0 - s * load) * load, pair);
  expect(limit.lateralAcceleration).toBeCloseTo(x * g, 8);
  expect(limit.transfer).toBeCloseTo(F * k * x, 6);
  expect(limit.lifts).toBe(false);
});

test("a tall pair tips before it slides, at half the track over the height", () => {
  const tall = { ...pair, centreOfGravityHeight: 0.9 };
  const limit = pairLimit((load) => 1.3 * load, tall);
  expect(limit.lifts).toBe(true);
  expect(limit.lateralAcceleration).toBeCloseTo((1.45 / 1.8) * g, 8); // NHTSA, T/(2h)
  expect(limit.transfer).toBeCloseTo((540 * g) / 2, 6);
});

test("extra mass at any height costs a load-sensitive pair some of its turn", () => {
  const grip = (load: number) => (1.3 - 5e-5 * load) * load;
  const empty = pairLimit(grip, pair).lateralAcceleration;
  const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(range(1, 200), range(0, 0.7), (extra, height) => {
      const mass = 540 + extra;
      const centreOfGravityHeight = (540 * 0.5 + extra * height) / mass;
      const loaded = pairLimit(grip, { ...pair, mass, centreOfGravityHeight });
      expect(loaded.lateralAcceleration).toBeLessThan(empty);
    }),
  );
});

test("20 m/s round 50 m asks for 8 m/s²", () => {
  expect(cornerSpeed(8, 50)).toBeCloseTo(20, 12); // by hand: √400
  expect(() => cornerSpeed(-1, 50)).toThrow(RangeError);
});

test("grip that no tyre has is refused in words about the car", () => {
  expect(() => pairLimit((load) => 11 * load, pair)).toThrow(/more than 100 m\/s²/); // by hand: 11 g = 107.9 m/s²
});

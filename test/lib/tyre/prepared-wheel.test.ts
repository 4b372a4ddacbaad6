import fc from "fast-check";
import { expect, test } from "vitest";
import { findPeak } from "../../../lib/solve.js";
import { clubTyreCoefficients } from "../../../lib/tyre/club-tyre.js";
import { combinedForce61 } from "../../../lib/tyre/magic-formula-61-combined.js";
import { aligningMoment61 } from "../../../lib/tyre/magic-formula-61-moment.js";
import {
  momentOf,
  mostPushOf,
  mostSlip,
  newWheel,
  prepareWheel,
  pushOf,
  sideOf,
} from "../../../lib/tyre/prepared-wheel.js";
import { referenceTyreCoefficients } from "../../../lib/tyre/reference-tyre.js";
import { between } from "../evenly.js";

const tyre = fc.constantFrom(clubTyreCoefficients, referenceTyreCoefficients, {
  ...clubTyreCoefficients,
  PEX1: -1.2, // a curve that bends the other way
  PDX3: 8,
  RVY3: 0.2,
});
const state = fc.record({
  t: tyre,
  load: between(10, 8900),
  pressure: between(186e3, 255e3),
  inclination: between(-0.1, 0.1),
});
const slip = fc.oneof(between(-1, 1), between(-0.1, 0.1), fc.constant(0));
const slipAngle = fc.oneof(between(-0.9, 0.9), between(-0.1, 0.1), fc.constant(0));
const wheel = newWheel(); // one for all, so that nothing is left from the state before

test("a prepared wheel gives the forces and the moment of the plain formulas, to rounding", () => {
  fc.assert(
    fc.property(state, slip, slipAngle, ({ t, load, pressure, inclination }, slip, slipAngle) => {
      prepareWheel(wheel, t, load, pressure, inclination);
      const plain = combinedForce61(t, slip, slipAngle, load, pressure, inclination);
      const tan = Math.tan(slipAngle);
      expect(Math.abs(pushOf(wheel, slip, tan) - plain.longitudinal)).toBeLessThan(1e-12 * load);
      expect(Math.abs(sideOf(wheel, slip, tan) - plain.side)).toBeLessThan(1e-12 * load);
      const moment = aligningMoment61(t, slip, slipAngle, load, pressure, inclination);
      expect(Math.abs(momentOf(wheel, slip, tan) - moment)).toBeLessThan(1e-12 * load);
    }),
    { numRuns: 2000 },
  );
});

test("most slip is where a search finds the top of the push", () => {
  fc.assert(
    fc.property(state, ({ t, load, pressure, inclination }) => {
      prepareWheel(wheel, t, load, pressure, inclination);
      const push = (slip: number) => pushOf(wheel, slip, 0);
      const top = findPeak(push, 0, 1);
      expect(mostSlip(wheel)).toBeCloseTo(top.at, 5);
      expect(mostPushOf(wheel)).toBeGreaterThan(top.value - 1e-9 * load);
    }),
  );
});

test("a curve that never turns pushes most at the greatest slip there is", () => {
  const t = { ...clubTyreCoefficients, PCX1: 1.4, PEX1: 1, PEX2: 0 };
  prepareWheel(wheel, t, 3000, 200e3, 0);
  expect(mostSlip(wheel)).toBe(1);
});

test("a wheel in the air gives nothing, whatever its slip, and still has a slip of most push", () => {
  fc.assert(
    fc.property(state, slip, slipAngle, ({ t, pressure, inclination }, slip, slipAngle) => {
      prepareWheel(wheel, t, -50, pressure, inclination);
      expect(pushOf(wheel, slip, Math.tan(slipAngle))).toBe(0);
      expect(sideOf(wheel, slip, Math.tan(slipAngle))).toBe(0);
      expect(momentOf(wheel, slip, Math.tan(slipAngle))).toBe(0);
      expect(mostSlip(wheel)).toBeGreaterThan(0);
    }),
  );
});

test("any state, however wild, gives finite forces, and no number is refused", () => {
  const any = between(-1e6, 1e6);
  fc.assert(
    fc.property(tyre, any, any, any, any, any, (t, load, pressure, inclination, slip, tan) => {
      prepareWheel(wheel, t, load, pressure, inclination);
      const forces = [pushOf, sideOf, momentOf].map((of) => of(wheel, slip, tan));
      for (const value of [...forces, mostSlip(wheel)]) expect(Number.isFinite(value)).toBe(true);
    }),
  );
  expect(() => prepareWheel(wheel, clubTyreCoefficients, Number.NaN, 2e5, 0)).toThrow(RangeError);
});

import fc from "fast-check";
import { expect, test } from "vitest";
import { findPeak } from "../../../lib/solve.js";
import { magicFormula61Tyre, referenceTyre } from "../../../lib/tyre/magic-formula-61.js";
import { sideFriction } from "../../../lib/tyre/magic-formula-61-side.js";
import { pairPeakSideForce, pairSideForce } from "../../../lib/tyre/pair.js";
import { referenceTyreCoefficients } from "../../../lib/tyre/reference-tyre.js";
import { outsideValidRange } from "../../../lib/tyre/valid-range.js";
import { nominalVerticalStiffness } from "../../../lib/tyre/vertical-force.js";
import { between } from "../evenly.js";

const published = magicFormula61Tyre(referenceTyreCoefficients);
const load = 4000;

// Pacejka, Tire and Vehicle Dynamics, 3rd ed. 2012, Appendix 3, Table A3.1, eqs 4.E1–4.E30
const byPressure = [
  { pressure: 187e3, stiffness: 58077.8, friction: 0.90602, peak: 3624.1 },
  { pressure: 220e3, stiffness: 53353.1, friction: 0.8785, peak: 3514.0 },
  { pressure: 253e3, stiffness: 48580.1, friction: 0.86209, peak: 3448.4 },
];

test.each(byPressure)(
  "at $pressure Pa stiffness, friction and peak are the published ones",
  (row) => {
    const state = { load, pressure: row.pressure };
    expect(published.corneringStiffness(state)).toBeCloseTo(row.stiffness, 1);
    expect(published.sideFriction(state)).toBeCloseTo(row.friction, 5);
    expect(meanPeak(row.pressure)).toBeCloseTo(row.peak, 1);
    expect(referenceTyre.peakSideForce(state)).toBeCloseTo(row.peak, 1);
  },
);

// By hand from Table A3.1, eq. 4.E23: PPY3 + 2·PPY4·dp = 0 at dp = 0.16666/0.5622 = 0.29644, so
// 220 kPa · 1.29644 = 285.2 kPa
test("friction against pressure turns at 285 kPa, outside the valid range, where it is held", () => {
  const loss = (pressure: number) => -sideFriction(referenceTyreCoefficients, load, pressure, 0);
  expect(findPeak(loss, 190e3, 400e3).at / 1e3).toBeCloseTo(285.2, 1);
  const { maximum } = referenceTyreCoefficients.valid.pressure;
  expect(maximum).toBeLessThan(285e3);
  expect(referenceTyre.sideFriction({ load, pressure: 350e3 })).toBe(
    referenceTyre.sideFriction({ load, pressure: maximum }),
  );
});

/** Mean of the greatest force to the left and to the right, searched, not from the closed form. */
function meanPeak(pressure: number): number {
  const force = (slipAngle: number) => published.sideForce({ load, pressure, slipAngle });
  const left = findPeak(force, 0, 0.3).value;
  const right = findPeak((slipAngle) => -force(-slipAngle), 0, 0.3).value;
  return (left + right) / 2;
}

// Same source: vertical stiffness of the nominal deflection eq. A3.5, contact patch eqs A3.7 and A3.8
test.each([
  [187e3, 187.33, 70.55, 72.07],
  [220e3, 209.65, 65.88, 70.57],
  [253e3, 231.97, 61.97, 69.17],
])("at %d Pa stiffness is %d N/mm and the patch %d by %d mm", (pressure, stiffness, a, b) => {
  const nominal = nominalVerticalStiffness(referenceTyreCoefficients, pressure);
  expect(nominal / 1000).toBeCloseTo(stiffness, 2);
  const patch = published.contactPatch({ load, pressure });
  expect(patch.halfLength * 1000).toBeCloseTo(a, 2);
  expect(patch.halfWidth * 1000).toBeCloseTo(b, 2);
});

// Same source: two tyres at one slip angle, mean of left and right turns
test.each([
  [0, 7028.0],
  [1000, 6990.7],
  [2000, 6886.6],
  [3000, 6726.7],
])("a pair with transfer %d N gives %d N", (transfer, force) => {
  const pair = { meanLoad: 4000, transfer };
  const both = (slipAngle: number) => pairSideForce(published, { ...pair, slipAngle });
  const left = findPeak(both, 0, 0.3).value;
  const right = findPeak((slipAngle) => -both(-slipAngle), 0, 0.3).value;
  expect((left + right) / 2).toBeCloseTo(force, 1);
  expect(Math.abs(pairPeakSideForce(referenceTyre, pair) - force)).toBeLessThan(0.11); // no pull
});

const inRange = fc.record({
  load: between(0, 10e3),
  pressure: between(186e3, 255e3),
  inclination: between(-0.1, 0.1),
  slipAngle: between(-0.9, 0.9),
  slip: between(-1, 1),
});

test("a tyre without pull, turned over, gives the opposite force", () => {
  fc.assert(
    fc.property(inRange, (state) => {
      const over = {
        ...state,
        slipAngle: -state.slipAngle,
        inclination: -state.inclination,
      };
      expect(referenceTyre.sideForce(over)).toBeCloseTo(-referenceTyre.sideForce(state), 8);
      const force = referenceTyre.combinedForce(state);
      const overForce = referenceTyre.combinedForce(over);
      expect(overForce.side).toBeCloseTo(-force.side, 8);
      expect(overForce.longitudinal).toBeCloseTo(force.longitudinal, 8);
    }),
  );
});

test("no slip angle gives more than the peak", () => {
  fc.assert(
    fc.property(inRange, (state) => {
      const peak = referenceTyre.peakSideForce(state);
      expect(referenceTyre.sideForce(state)).toBeLessThanOrEqual(peak + 1e-8);
    }),
  );
});

test("the peak slip angle gives the peak", () => {
  fc.assert(
    fc.property(inRange, (state) => {
      const slipAngle = referenceTyre.peakSlipAngle(state);
      expect(referenceTyre.sideForce({ ...state, slipAngle })).toBeCloseTo(
        referenceTyre.peakSideForce(state),
        6,
      );
    }),
  );
});

test("an upright tyre starts with the cornering stiffness", () => {
  fc.assert(
    fc.property(inRange, ({ load, pressure }) => {
      const slope = referenceTyre.sideForce({ load, pressure, slipAngle: 1e-7 }) / 1e-7;
      const stiffness = referenceTyre.corneringStiffness({ load, pressure });
      expect(Math.abs(slope - stiffness)).toBeLessThan(1e-3 * stiffness + 1e-3);
    }),
  );
});

test("without brake or drive slip the combined side force is the pure one", () => {
  fc.assert(
    fc.property(inRange, (state) => {
      const combined = referenceTyre.combinedForce({ ...state, slip: 0 }).side;
      expect(combined).toBeCloseTo(referenceTyre.sideForce(state), 6);
    }),
  );
});

test("brake slip takes side force away, and slip angle takes braking away", () => {
  const state = { load: 4000, slipAngle: 0.08 };
  const side = [0, -0.05, -0.1, -0.2].map((slip) =>
    referenceTyre.combinedForce({ ...state, slip }),
  );
  for (const [i, force] of side.entries())
    if (i > 0) expect(force.side).toBeLessThan(side[i - 1]?.side ?? 0);
  const straight = referenceTyre.combinedForce({ load: 4000, slipAngle: 0, slip: -0.1 });
  expect(side[2]?.longitudinal).toBeGreaterThan(straight.longitudinal);
});

// By hand from Table A3.1, eq. 4.E13 at nominal load and pressure: PDX1
test("friction along the tyre at nominal load is 1.0422", () => {
  const along = (slip: number) =>
    referenceTyre.combinedForce({ load: 4000, slipAngle: 0, slip }).longitudinal;
  const drive = findPeak(along, 0, 0.5).value;
  const brake = findPeak((slip) => -along(-slip), 0, 0.5).value;
  expect((drive + brake) / 2 / 4000).toBeCloseTo(1.0422, 4);
});

test("any state, however wild, gives finite forces", () => {
  const any = between(-1e6, 1e6);
  fc.assert(
    fc.property(any, any, any, any, any, (load, pressure, inclination, slipAngle, slip) => {
      const state = { load, pressure, inclination, slipAngle, slip };
      for (const tyre of [published, referenceTyre]) {
        const force = tyre.combinedForce(state);
        for (const value of [force.side, force.longitudinal, tyre.peakSlipAngle(state)])
          expect(Number.isFinite(value)).toBe(true);
        if (load <= 0) expect(force).toEqual({ longitudinal: 0, side: 0 });
      }
    }),
  );
});

test("a state outside the valid range is answered with the nearest one, and said so", () => {
  const state = { load: 4000, pressure: 300e3 };
  expect(referenceTyre.peakSideForce(state)).toBe(
    referenceTyre.peakSideForce({ load: 4000, pressure: 255e3 }),
  );
  expect(outsideValidRange(referenceTyre, state)).toEqual(["pressure"]);
  expect(outsideValidRange(referenceTyre, { load: 4000 })).toEqual([]);
});

test("a state that is not a number is refused", () => {
  expect(() => referenceTyre.sideForce({ load: NaN, slipAngle: 0 })).toThrow(RangeError);
});

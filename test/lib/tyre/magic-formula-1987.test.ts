import fc from "fast-check";
import { expect, test } from "vitest";
import { magicFormula1987 as tyre } from "../../../lib/tyre/magic-formula-1987.js";
import { pairOwnPeaks, pairPeakSideForce } from "../../../lib/tyre/pair.js";
import { between } from "../evenly.js";

const degree = Math.PI / 180;

// Bakker, Nyborg, Pacejka, SAE 870421 (1987); Bakker, Pacejka, Lidner, SAE 890087 (1989):
// the published coefficients worked out by hand at each load
const published = [
  { load: 2000, peak: 1933.6, stiffness: 708.777, at: 9.346, four: 1722.54, eight: 1928.73 },
  { load: 4000, peak: 3690.4, stiffness: 1027.335, at: 9.351, four: 3096.61, eight: 3676.79 },
  { load: 6000, peak: 5270.4, stiffness: 1076.149, at: 10.824, four: 3833.1, eight: 5166.09 },
  { load: 8000, peak: 6673.6, stiffness: 1028.829, at: 12.777, four: 4011.22, eight: 6253.25 },
];

test.each(published)("at $load N peak, stiffness and curve are the published ones", (row) => {
  const { load } = row;
  expect(tyre.peakSideForce({ load })).toBeCloseTo(row.peak, 6);
  expect(Math.abs(tyre.corneringStiffness({ load }) * degree - row.stiffness)).toBeLessThan(0.003);
  expect(tyre.peakSlipAngle({ load }) / degree).toBeCloseTo(row.at, 3);
  expect(tyre.sideForce({ load, slipAngle: 4 * degree })).toBeCloseTo(row.four, 2);
  expect(tyre.sideForce({ load, slipAngle: 8 * degree })).toBeCloseTo(row.eight, 2);
});

test("friction falls in a straight line, 1.011 − 0.0221 for each kN", () => {
  for (const load of [1000, 3000, 5000])
    expect(tyre.peakSideForce({ load }) / load).toBeCloseTo(1.011 - (0.0221 * load) / 1000, 9);
});

test("a pair of own peaks loses exactly 44.2 N for each kN² of transfer", () => {
  for (const transfer of [0, 1000, 2000, 3000]) {
    const lost =
      pairOwnPeaks(tyre, { meanLoad: 4000, transfer: 0 }) -
      pairOwnPeaks(tyre, { meanLoad: 4000, transfer });
    expect(lost).toBeCloseTo(44.2 * (transfer / 1000) ** 2, 6);
  }
});

test.each([
  [0, 7380.8],
  [1000, 7334.51],
  [2000, 7201.03],
  [3000, 6982.74],
])("a pair at one slip angle with transfer %d N gives %d N", (transfer, force) => {
  expect(pairPeakSideForce(tyre, { meanLoad: 4000, transfer })).toBeCloseTo(force, 2);
});

test("any load and any angle give a finite, odd side force; an unloaded tyre gives none", () => {
  const any = between(-1e5, 1e5);
  fc.assert(
    fc.property(any, any, (load, slipAngle) => {
      const force = tyre.sideForce({ load, slipAngle });
      expect(Number.isFinite(force)).toBe(true);
      expect(tyre.sideForce({ load, slipAngle: -slipAngle }) + force).toBeCloseTo(0, 9);
      if (load <= 0) expect(force).toBe(0);
    }),
  );
});

import fc from "fast-check";
import { expect, test } from "vitest";
import {
  frictionAtLoad,
  greatestUsefulLoad,
  loadSensitiveTyre,
  peakSideForceAtLoad,
  sideForceLostToTransfer,
  simpleTyre,
} from "../../../lib/tyre/load-sensitive.js";
import { pairLoads, pairPeakSideForce } from "../../../lib/tyre/pair.js";
import { between } from "../evenly.js";

const tyre = loadSensitiveTyre(simpleTyre);
const share = between(0, 1);

test("friction falls by the sensitivity for each newton", () => {
  expect(frictionAtLoad(simpleTyre, 4000)).toBeCloseTo(1.3 - 0.2, 12); // by hand
});

test("the peak is load times friction, by hand 4000 N × 1.10", () => {
  expect(peakSideForceAtLoad(simpleTyre, 4000)).toBeCloseTo(4400, 9);
});

test("beyond the useful load more load adds nothing", () => {
  expect(greatestUsefulLoad(simpleTyre)).toBeCloseTo(13_000, 6); // 1.3 / (2 × 5e-5), by hand
  expect(peakSideForceAtLoad(simpleTyre, 20_000)).toBe(peakSideForceAtLoad(simpleTyre, 13_000));
});

test("a pair loses exactly 2·s·ΔF² to transfer", () => {
  fc.assert(
    fc.property(share, share, (a, b) => {
      const meanLoad = 100 + 5000 * a;
      const transfer = meanLoad * b;
      const lost =
        pairPeakSideForce(tyre, { meanLoad, transfer: 0 }) -
        pairPeakSideForce(tyre, { meanLoad, transfer });
      expect(lost).toBeCloseTo(sideForceLostToTransfer(simpleTyre, transfer), 6);
    }),
  );
});

test("a tyre without load sensitivity loses nothing", () => {
  const even = loadSensitiveTyre({ ...simpleTyre, loadSensitivity: 0 });
  expect(pairPeakSideForce(even, { meanLoad: 3000, transfer: 3000 })).toBeCloseTo(
    pairPeakSideForce(even, { meanLoad: 3000, transfer: 0 }),
    9,
  );
});

test("the slip curve is odd, rises to its peak and stays there", () => {
  fc.assert(
    fc.property(share, share, (a, b) => {
      const load = 8000 * a;
      const slipAngle = 0.5 * b;
      const force = tyre.sideForce({ load, slipAngle });
      expect(tyre.sideForce({ load, slipAngle: -slipAngle })).toBeCloseTo(-force, 9);
      expect(force).toBeLessThanOrEqual(tyre.peakSideForce({ load }) + 1e-9);
      if (slipAngle >= simpleTyre.peakSlipAngle)
        expect(force).toBeCloseTo(tyre.peakSideForce({ load }), 9);
    }),
  );
});

test("the curve starts with the cornering stiffness", () => {
  const slope = tyre.sideForce({ load: 3000, slipAngle: 1e-7 }) / 1e-7;
  expect(slope / tyre.corneringStiffness({ load: 3000 })).toBeCloseTo(1, 5);
});

test("a pair cannot transfer more than the inner tyre carries", () => {
  expect(() => pairLoads({ meanLoad: 1000, transfer: 1001 })).toThrow(
    "transfer is 1001 N but must be from 0 to 1000 N.",
  );
});

test("a tyre that makes no sense is refused", () => {
  expect(() => loadSensitiveTyre({ ...simpleTyre, loadSensitivity: -1 })).toThrow(RangeError);
});

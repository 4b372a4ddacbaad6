import fc from "fast-check";
import { expect, test } from "vitest";
import { clubTyre } from "../../../lib/tyre/club-tyre.js";
import { loadSensitiveTyre, simpleTyre } from "../../../lib/tyre/load-sensitive.js";
import { pairPeakSideForce } from "../../../lib/tyre/pair.js";
import { pairShare } from "../../../lib/tyre/pair-share.js";

test("both tyres run at one slip angle and add up to the force that was asked for", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 500, max: 4000, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 0.999, noNaN: true }),
      (meanLoad, moved, part) => {
        const pair = { meanLoad, transfer: moved * meanLoad };
        const sideForce = part * pairPeakSideForce(clubTyre, pair);
        const { outer, inner } = pairShare(clubTyre, { ...pair, sideForce });
        expect(outer + inner).toBeCloseTo(sideForce, 2);
      },
    ),
  );
});

test("a tyre whose peak follows (μ0 − s·F)·F shares as its peaks do", () => {
  // by hand, 4000 and 2000 N: (1.3 − 0.2)·4000 = 4400, (1.3 − 0.1)·2000 = 2400
  const tyre = loadSensitiveTyre(simpleTyre);
  const { outer, inner } = pairShare(tyre, { meanLoad: 3000, transfer: 1000, sideForce: 3400 });
  expect(outer).toBeCloseTo((3400 * 4400) / 6800, 4);
  expect(inner).toBeCloseTo((3400 * 2400) / 6800, 4);
});

test("without transfer each tyre makes half", () => {
  const { outer, inner } = pairShare(clubTyre, { meanLoad: 2700, transfer: 0, sideForce: 4000 });
  expect(outer).toBeCloseTo(2000, 3);
  expect(inner).toBeCloseTo(2000, 3);
});

test("a force beyond both tyres is refused with the most they can make", () => {
  expect(() => pairShare(clubTyre, { meanLoad: 2700, transfer: 0, sideForce: 9000 })).toThrow(
    /side force is 9000 N but must be from 0 to/,
  );
});

import fc from "fast-check";
import { expect, test } from "vitest";
import { findPeak } from "../../../lib/solve.js";
import { clubTyreCoefficients as club, clubTyre } from "../../../lib/tyre/club-tyre.js";
import {
  longitudinalFriction,
  longitudinalSlipStiffness,
} from "../../../lib/tyre/magic-formula-61-longitudinal.js";
import { peakSideForce61, sideFriction } from "../../../lib/tyre/magic-formula-61-side.js";
import { referenceTyreCoefficients } from "../../../lib/tyre/reference-tyre.js";
import { tunedFullTyre, tunedTyre } from "../../../lib/tyre/tuned-tyre.js";
import { between } from "../evenly.js";

const state = fc.tuple(between(500, 8000), between(130e3, 290e3), between(-0.1, 0.1));
const frictions = [sideFriction, longitudinalFriction];
// a tyre whose own top is not at its nominal pressure: 220 and 240 kPa
const offCentre = { ...club, PPY3: 0.12, PPX3: 0.16 };

test("grip scales friction along and across and the peak of a leaning tyre, and no stiffness", () => {
  fc.assert(
    fc.property(state, between(0.5, 1.5), (at, grip) => {
      const tuned = tunedTyre(club, { grip });
      for (const friction of frictions)
        expect(friction(tuned, ...at) / friction(club, ...at)).toBeCloseTo(grip, 12);
      expect(peakSideForce61(tuned, ...at) / peakSideForce61(club, ...at)).toBeCloseTo(grip, 12);
      const [load, pressure] = at;
      expect(longitudinalSlipStiffness(tuned, load, pressure)).toBe(
        longitudinalSlipStiffness(club, load, pressure),
      );
    }),
  );
});

test("the best pressure is where it was put, as high as before", () => {
  fc.assert(
    fc.property(between(140e3, 280e3), fc.constantFrom(club, offCentre), (bestPressure, t) => {
      const tuned = tunedTyre(t, { bestPressure });
      for (const friction of frictions) {
        const before = findPeak((p) => friction(t, 3000, p, 0.02), 120e3, 300e3, 0.1);
        const now = findPeak((p) => friction(tuned, 3000, p, 0.02), 120e3, 300e3, 0.1);
        expect(Math.abs(now.at - bestPressure)).toBeLessThan(20);
        expect(now.value).toBeCloseTo(before.value, 9);
      }
    }),
  );
});

// By hand: the club tyre loses 0.6·0.1² = 0.6 % of its friction to the side 20 kPa from its best
test("beside the best pressure friction falls as it did", () => {
  const tuned = tunedTyre(club, { bestPressure: 170e3 });
  const at = (pressure: number) => sideFriction(tuned, 3000, pressure, 0);
  expect(1 - at(190e3) / at(170e3)).toBeCloseTo(0.006, 9);
  expect(1 - at(150e3) / at(170e3)).toBeCloseTo(0.006, 9);
});

test("the tyre's own best pressure, put where it is, changes nothing", () => {
  const tuned = tunedTyre(offCentre, { bestPressure: 220e3 });
  for (const pressure of [160e3, 220e3, 280e3])
    expect(sideFriction(tuned, 3000, pressure, 0)).toBeCloseTo(
      sideFriction(offCentre, 3000, pressure, 0),
      12,
    );
});

test("both at once, in any order of asking, give the same object again", () => {
  const both = tunedTyre(club, { grip: 0.9, bestPressure: 180e3 });
  expect(sideFriction(both, 3000, 180e3, 0)).toBeCloseTo(
    0.9 * sideFriction(club, 3000, 2e5, 0),
    12,
  );
  expect(tunedTyre(club, { bestPressure: 180e3, grip: 0.9 })).toBe(both);
  expect(tunedTyre(club, { grip: 0.9 })).not.toBe(both);
  expect(tunedTyre(club, {})).toBe(club);
  expect(tunedFullTyre(clubTyre, {})).toBe(clubTyre);
  const full = tunedFullTyre(clubTyre, { grip: 0.9, bestPressure: 180e3 });
  expect(full).toBe(tunedFullTyre(clubTyre, { grip: 0.9, bestPressure: 180e3 }));
  expect(full.coefficients).toBe(both);
});

test("a thousand wishes of a sampler are not all kept, and each is answered right", () => {
  for (let i = 0; i < 1000; i++) {
    const grip = 0.8 + i * 4e-4;
    expect(tunedTyre(club, { grip }).PDY1).toBeCloseTo(club.PDY1 * grip, 12);
  }
});

test("a tyre without a best pressure, and a wish out of range, are refused in one sentence", () => {
  expect(() => tunedTyre(referenceTyreCoefficients, { bestPressure: 2e5 })).toThrow(
    "best pressure cannot be given: the published road tyre has none to move.",
  );
  expect(() => tunedTyre(club, { bestPressure: 4e5 })).toThrow(
    "best pressure is 400000 Pa but must be from 120000 to 300000 Pa.",
  );
  expect(() => tunedTyre(club, { grip: 2 })).toThrow("grip is 2 but must be from 0.5 to 1.5.");
  expect(() => tunedTyre(club, { grip: Number.NaN })).toThrow(RangeError);
});

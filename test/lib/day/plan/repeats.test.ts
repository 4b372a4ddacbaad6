import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  againstBothBaselines,
  chanceOfRightOrder,
  lapsToTell,
  spreadOfDifference,
} from "../../../../lib/day/plan/repeats.js";

describe("telling a change from chance", () => {
  it("halves the scatter for four times the laps", () => {
    expect(spreadOfDifference({ spread: 0.1, laps: 2 })).toBeCloseTo(0.1, 12);
    expect(spreadOfDifference({ spread: 0.1, laps: 8 })).toBeCloseTo(0.05, 12);
  });

  it("counts a return run as baseline too", () => {
    const repeats = { spread: 1, laps: 6, baselineLaps: 12 };
    expect(spreadOfDifference(repeats)).toBeCloseTo(0.5, 12); // √(1/6 + 1/12)
  });

  it("is a coin thrown for a change that does nothing", () => {
    expect(chanceOfRightOrder(0, { spread: 0.1, laps: 50 })).toBeCloseTo(0.5, 12);
    expect(lapsToTell(0, 0.1)).toBe(Number.POSITIVE_INFINITY);
  });

  it("needs about 22 laps for half a spread, nineteen times in twenty", () => {
    expect(lapsToTell(0.5, 1)).toBe(22); // 2 × (1.6449 / 0.5)² = 21.6, quantile of Abramowitz & Stegun
  });

  it("is right as often as asked with the laps it asks for, and less often with one fewer", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 3, noNaN: true }),
        fc.double({ min: 0.6, max: 0.99, noNaN: true }),
        (difference, chance) => {
          const laps = lapsToTell(difference, 1, chance);
          expect(chanceOfRightOrder(difference, { spread: 1, laps })).toBeGreaterThan(
            chance - 1e-9,
          );
          if (laps > 1)
            expect(chanceOfRightOrder(-difference, { spread: 1, laps: laps - 1 })).toBeLessThan(
              chance + 1e-9,
            );
        },
      ),
    );
  });

  it("lets an even drift drop out against both baselines", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -999, max: 999 }),
        fc.integer({ min: -999, max: 999 }),
        (drift, real) => {
          const runs = { before: 100, changed: 100 + drift + real, after: 100 + 2 * drift };
          expect(againstBothBaselines(runs)).toBeCloseTo(real, 9);
        },
      ),
    );
  });

  it("refuses no spread and no laps", () => {
    expect(() => spreadOfDifference({ spread: 0, laps: 3 })).toThrow("spread");
    expect(() => spreadOfDifference({ spread: 1, laps: 0 })).toThrow("laps");
    expect(() => lapsToTell(1, 1, 1)).toThrow("chance");
  });
});

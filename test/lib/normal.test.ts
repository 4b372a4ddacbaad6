import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shareBelow } from "../../lib/normal.js";

describe("share of a normal distribution below a point", () => {
  // Abramowitz & Stegun 1964, table 26.1, from memory
  it.each([
    [0, 0.5],
    [1, 0.841344746068543],
    [2, 0.977249868051821],
    [3, 0.99865010196837],
    [1.644853626951473, 0.95],
    [-1.959963984540054, 0.025],
  ])("is the tabled value at %d deviations", (deviations, share) => {
    expect(shareBelow(deviations)).toBeCloseTo(share, 12);
  });

  it("never falls, and both sides of the middle add up to one", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -40, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (x, more) => {
          expect(shareBelow(x) + shareBelow(-x)).toBeCloseTo(1, 12);
          expect(shareBelow(x + more)).toBeGreaterThanOrEqual(shareBelow(x) - 1e-12);
        },
      ),
    );
  });

  it("refuses what is not a number", () => {
    expect(() => shareBelow(Number.NaN)).toThrow(RangeError);
  });
});

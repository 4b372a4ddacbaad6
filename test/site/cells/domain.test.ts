import fc from "fast-check";
import { afterEach, describe, expect, it } from "vitest";
import { span, upTo } from "../../../site/cells/domain.js";
import { reader } from "../../../site/cells/reader.js";
import { fromShown } from "../../../site/say/units.js";

afterEach(() => {
  reader.units = "metric";
});

const value = fc.double({ min: 1e-3, max: 1e9, noNaN: true });
const anyValue = fc
  .double({ min: -1e6, max: 1e6, noNaN: true })
  .filter((x) => x === 0 || Math.abs(x) > 1e-6);

describe("upTo", () => {
  it("goes up to the next calm number and leaves a calm one as it is", () => {
    expect([5130, 6000, 1.01, 0.87, 11, 6.0000000000001].map((x) => upTo(x))).toEqual([
      6000, 6000, 1.2, 0.9, 12, 6,
    ]);
  });

  it("goes down for a value below zero and gives an axis of nothing some width", () => {
    expect(upTo(-140)).toBe(-150);
    expect(upTo(0)).toBe(1);
  });

  it("is calm in the unit that the reader chose", () => {
    expect(upTo(fromShown("stiffness", 33), "stiffness")).toBe(35e3);
    reader.units = "us";
    expect(upTo(5130, "force")).toBeCloseTo(fromShown("force", 1200, "us"), 9); // 1153 lbf
  });

  it("always holds the value and never wastes more than half of the axis", () => {
    fc.assert(
      fc.property(value, (x) => {
        expect(upTo(x)).toBeGreaterThanOrEqual(x * (1 - 1e-8));
        expect(upTo(x)).toBeLessThanOrEqual(x * 1.5);
      }),
    );
  });

  it("refuses a value that no axis can hold", () => {
    expect(() => upTo(Number.POSITIVE_INFINITY)).toThrow("An axis cannot end at Infinity.");
    expect(() => span(0, Number.NaN)).toThrow("An axis cannot go from 0 to NaN.");
  });
});

describe("span", () => {
  it("ends at calm numbers on both sides", () => {
    expect(span(0.73, 1.21)).toEqual([0.7, 1.3]);
    expect(span(-130, 870)).toEqual([-200, 1000]);
    expect(span(870, -130)).toEqual([-200, 1000]);
  });

  it("holds both ends, has some width, and is never more than twice as wide as asked", () => {
    fc.assert(
      fc.property(anyValue, anyValue, (a, b) => {
        const [from, to] = span(a, b);
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const dust = 1e-6 * (high - low) + 1e-8 * Math.max(Math.abs(low), Math.abs(high));
        expect(from).toBeLessThanOrEqual(low + dust);
        expect(to).toBeGreaterThanOrEqual(high - dust);
        expect(to).toBeGreaterThan(from);
        if (high - low > 1e-3 * Math.max(Math.abs(low), Math.abs(high)))
          expect(to - from).toBeLessThanOrEqual(2 * (high - low));
      }),
    );
  });
});

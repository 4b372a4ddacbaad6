import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { NumberShape } from "../../../lib/car/file/shape.js";
import {
  isTaken,
  settled,
  shownNumber,
  shownRangeOf,
} from "../../../site/pages/your-car/model/number.js";
import { shapeAt } from "../../../site/pages/your-car/model/path.js";
import { numberFrom } from "../../../site/say/typed-number.js";

const shape = (path: string) => shapeAt(path) as NumberShape;

describe("a number as somebody types it", () => {
  it("is in the reader's unit where it brings none", () => {
    expect(numberFrom("60", "stiffness", "metric")).toBe(60e3);
    expect(numberFrom(" 29 ", "pressure", "us")).toBeCloseTo(199948, 0); // 1 psi = 6894.757 Pa – NIST SP 811
    expect(numberFrom("-1.5", "angle", "metric")).toBeCloseTo(-0.0261799, 6);
  });

  it("may bring any unit of its kind", () => {
    expect(numberFrom("94.5 in", "length", "metric")).toBeCloseTo(2.4003, 9);
    expect(numberFrom("2400mm", "length", "us")).toBeCloseTo(2.4, 12);
    expect(numberFrom("350 lbf/in", "stiffness", "metric")).toBeCloseTo(61294.4, 0);
    expect(numberFrom("165 lb", "mass", "metric")).toBeCloseTo(74.84, 2);
  });

  it("may have a comma for its point, and a true minus", () => {
    expect(numberFrom("1,44", "length", "metric")).toBe(1.44);
    expect(numberFrom("−2", "ratio", "metric")).toBe(-2);
  });

  it.each(["", "abc", "1.2.3", "12 parsecs", "1e9 m", "--3", "Infinity", "0x10", "60 kg"])(
    "is none where nobody could read it so: %s",
    (text) => {
      expect(numberFrom(text, "length", "metric")).toBeUndefined();
    },
  );
});

describe("a number as the page shows it", () => {
  it("has one digit more than its slider, and no idle zeros", () => {
    expect(shownNumber(1.44, shape("front.track"), "metric")).toBe("1.44");
    expect(shownNumber(60e3, shape("front.spring.rate"), "metric")).toBe("60");
    expect(shownNumber(0, shape("body.leftOfCentre"), "metric")).toBe("0");
  });

  it("is read back to within what it shows", () => {
    const track = shape("front.track");
    const inRange = fc.double({ min: track.min, max: track.max, noNaN: true });
    fc.assert(
      fc.property(inRange, fc.constantFrom("metric", "us"), (value, units) => {
        const back = numberFrom(shownNumber(value, track, units), "length", units) ?? Number.NaN;
        expect(Math.abs(back - value)).toBeLessThan(0.002);
      }),
    );
  });

  it("stands in a range that is rounded inwards, so that its ends are taken", () => {
    expect(shownRangeOf(shape("front.spring.rate"), "metric")).toBe("5 to 400 N/mm");
    expect(shownRangeOf(shape("front.camber.left"), "metric")).toBe("−6 to 3°");
    expect(shownRangeOf(shape("front.track"), "us")).toBe("2.63 to 7.21 ft");
    for (const units of ["metric", "us"] as const) {
      for (const path of ["front.track", "rear.toe.left", "limits.leastMass", "air.drag"]) {
        const [, from = "", to = ""] =
          /^(\S+) to (\S+?)(?:°|\s|$)/.exec(shownRangeOf(shape(path), units)) ?? [];
        for (const end of [from, to]) {
          const { quantity } = shape(path);
          const value = numberFrom(end, quantity, units) ?? Number.NaN;
          expect(isTaken(settled(value, shape(path)), shape(path)), `${path}, ${end}`).toBe(true);
        }
      }
    }
  });
});

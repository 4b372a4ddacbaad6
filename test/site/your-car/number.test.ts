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
import { isBareLength, numberFrom } from "../../../site/say/typed-number.js";

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

  it.each([
    // factors: NIST SP 811 (2008), B.8; products by hand
    ["400 lb/in", "stiffness", 70_050.7], // 400 · 4.4482216 / 0.0254
    ["400 lbf / in", "stiffness", 70_050.7],
    ["7 kg/mm", "stiffness", 68_646.55], // 7 · 9.80665 · 1000
    ["7 kgf/mm", "stiffness", 68_646.55],
    ["2 bar", "pressure", 200_000],
    ["29 PSI", "pressure", 199_948],
    ["12.2 cm", "lengthSmall", 0.122],
    ['94.5"', "carLength", 2.4003],
    ["58 1/8 in", "carLength", 1.476375],
    ["1/2 in", "lengthSmall", 0.0127],
    ["7' 10 1/2\"", "carLength", 2.4003], // 94.5 in
    ["7 ft 10.5 in", "carLength", 2.4003],
    ["60 %", "share", 0.6],
    ["60 %", "ratio", 0.6],
    ["1200 Ns/m", "damping", 1200],
    ["0.5 deg", "angle", 0.0087266], // π / 360
    ["10'", "angle", 0.0029089], // π / 1080
    ["−1 1/2", "angle", -0.0261799],
  ] as const)("is read as people write it: %s", (text, quantity, si) => {
    expect(numberFrom(text, quantity, "metric") ?? Number.NaN).toBeCloseTo(si, si > 1000 ? 0 : 6);
  });

  it("takes toe as a length where it says at which diameter and of how many wheels, and asks else", () => {
    // by hand: asin(1/380) = 0.0026316, and half of it where 1 mm is the total of two wheels
    expect(numberFrom("1 mm at 380 mm per wheel", "angle", "metric")).toBeCloseTo(0.0026316, 7);
    expect(numberFrom("-1 mm at 380 mm total", "angle", "us")).toBeCloseTo(-0.0013158, 7);
    expect(numberFrom("1/16 in at 15 in total", "angle", "us")).toBeCloseTo(0.0020833, 7);
    for (const text of ["1 mm", "1 mm at 380 mm", "1/16 in", '1/16"']) {
      expect(numberFrom(text, "angle", "metric")).toBeUndefined();
      expect(isBareLength(text, "angle", "metric")).toBe(true);
    }
    for (const text of ["0.1", "0.1°", "abc", "1 kg"])
      expect(isBareLength(text, "angle", "metric")).toBe(false);
    expect(isBareLength("1 mm", "lengthSmall", "metric")).toBe(false);
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
        const back =
          numberFrom(shownNumber(value, track, units), track.quantity, units) ?? Number.NaN;
        expect(Math.abs(back - value)).toBeLessThan(0.002);
      }),
    );
  });

  it("stands in a range that is rounded inwards, so that its ends are taken", () => {
    expect(shownRangeOf(shape("front.spring.rate"), "metric")).toBe("5 to 400 N/mm");
    expect(shownRangeOf(shape("front.camber.left"), "metric")).toBe("−6 to 3°");
    expect(shownRangeOf(shape("front.track"), "us")).toBe("31.5 to 86.6 in");
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

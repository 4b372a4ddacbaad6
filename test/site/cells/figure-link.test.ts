import { parameters } from "@rollbook/lib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { linkToFigure, wantedFrom } from "../../../site/cells/figure-link.js";
import { from } from "../../../site/cells/spec.js";
import { fromShown } from "../../../site/say/units.js";

const inputs = {
  lateralAcceleration: from(parameters.lateralAcceleration, { min: 1, max: 10, start: 7 }),
  frontBar: from(parameters.barRollStiffness, {
    name: "Front bar",
    max: fromShown("rollStiffness", 600),
  }),
};
const start = { lateralAcceleration: 7, frontBar: inputs.frontBar.start };
const wanted = (hash: string, units: "metric" | "us" = "metric") =>
  wantedFrom(hash, "bars", inputs, units);

describe("a link to a figure", () => {
  it("is there once a slider has moved, and names only those that have", () => {
    expect(linkToFigure("bars", inputs, start)).toBeUndefined();
    expect(linkToFigure("bars", inputs, { ...start, lateralAcceleration: 8.1 })).toBe(
      "#bars?lateralAcceleration=8.1",
    );
  });

  it("is written in metric units, whatever the reader sees", () => {
    const frontBar = fromShown("rollStiffness", 480);
    expect(linkToFigure("bars", inputs, { ...start, frontBar })).toBe("#bars?frontBar=480");
    expect(wanted("#bars?frontBar=480", "us")?.values.frontBar).toBeCloseTo(frontBar, 6);
  });

  it("gives back the values that it was made from", () => {
    const inRange = fc.double({ min: 1, max: 10, noNaN: true });
    fc.assert(
      fc.property(inRange, (lateralAcceleration) => {
        const link = linkToFigure("bars", inputs, { ...start, lateralAcceleration });
        const back = link ? wanted(link)?.values.lateralAcceleration : 7;
        expect(back).toBeCloseTo(lateralAcceleration, 6);
        expect(link ? wanted(link)?.faults : []).toEqual([]);
      }),
    );
  });

  it("may ask for the least and the most that a slider has", () => {
    expect(wanted("#bars?lateralAcceleration=least&frontBar=most")).toEqual({
      values: { lateralAcceleration: 1, frontBar: inputs.frontBar.max },
      faults: [],
    });
  });

  it("to another figure or to none is let pass", () => {
    for (const hash of ["", "#bars", "#other?frontBar=480", "#barsx?frontBar=1", "#bars?"]) {
      expect(wanted(hash), hash).toBeUndefined();
    }
  });
});

describe("a bad value in a link", () => {
  it("out of range becomes the nearest in range, and one sentence says so", () => {
    expect(wanted("#bars?lateralAcceleration=99")).toEqual({
      values: { lateralAcceleration: 10 },
      faults: ["Lateral acceleration takes 1.0 to 10.0 m/s², not 99.0."],
    });
    expect(wanted("#bars?frontBar=-5")?.values.frontBar).toBe(0);
  });

  it("is told in the reader's own unit", () => {
    expect(wanted("#bars?frontBar=900", "us")?.faults[0]).toMatch(/lbf·ft\/°, not 664\.?/);
  });

  it.each([
    ["#bars?lateralAcceleration=fast", "Lateral acceleration takes a number, not “fast”."],
    ["#bars?lateralAcceleration=", "Lateral acceleration takes a number, not “”."],
    ["#bars?lateralAcceleration=Infinity", "Lateral acceleration takes a number, not “Infinity”."],
    ["#bars?wings=3", "The link sets “wings”, which this figure does not have."],
    ["#bars?toString=3", "The link sets “toString”, which this figure does not have."],
  ])("%s is left out, and one sentence says why", (hash, sentence) => {
    expect(wanted(hash)).toEqual({ values: {}, faults: [sentence] });
  });

  it("never gives a value outside the range, whatever the link says", () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom("metric" as const, "us" as const), (text, units) => {
        const hash = `#bars?frontBar=${text}&lateralAcceleration=${encodeURIComponent(text)}`;
        const { values = {} } = wanted(hash, units) ?? {};
        for (const [key, value] of Object.entries(values)) {
          const { min, max } = inputs[key as keyof typeof inputs];
          expect(value).toBeGreaterThanOrEqual(min - 1e-9);
          expect(value).toBeLessThanOrEqual(max + 1e-9);
        }
      }),
    );
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jacking } from "../../../lib/linkage/jacking.js";

const axle = { outerSideForce: 4000, innerSideForce: 2000, rollCentreHeight: 0.05, track: 1.5 };

describe("jacking", () => {
  it("lifts by the difference of the side forces times the slope", () => {
    expect(jacking(axle).total).toBeCloseTo(133.33, 2); // (4000 − 2000)·2·50/1500
  });

  it("pulls down when the roll centre is below the ground", () => {
    expect(jacking({ ...axle, rollCentreHeight: -0.05 }).total).toBeLessThan(0);
  });

  it("transfers the same load through the links however the tyres split the side force", () => {
    const split = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(split, (outerShare) => {
        const [outerSideForce, innerSideForce] = [6000 * outerShare, 6000 * (1 - outerShare)];
        const { transfer } = jacking({ ...axle, outerSideForce, innerSideForce });
        expect(transfer).toBeCloseTo((6000 * 0.05) / 1.5, 8); // Fy·h/t
      }),
    );
  });

  it("names a track out of range", () => {
    expect(() => jacking({ ...axle, track: 0 })).toThrow(
      /track is 0 m but must be from 0.2 to 4 m/,
    );
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ParameterKey, parameters } from "../../../lib/parameters.js";
import { decimalsIn, shownRange } from "../../../site/say/shown-range.js";
import { toShown } from "../../../site/say/units.js";

const anyParameter = fc.constantFrom(...(Object.keys(parameters) as ParameterKey[]));

describe("a range in the shown unit", () => {
  it("is the table's own in metric", () => {
    expect(shownRange(parameters.tyrePressure, "metric")).toEqual({
      min: 80,
      max: 400,
      step: 5,
      decimals: 0,
    });
  });

  it("steps by half a pound where metric steps by 5 kPa (5 kPa = 0.725 psi, NIST SP 811)", () => {
    const { step, min, max } = shownRange(parameters.tyrePressure, "us");
    expect(step).toBe(0.5);
    expect(min).toBe(12); // 80 kPa = 11.603 psi, up to a whole step
    expect(max).toBe(58); // 400 kPa = 58.015 psi, down to a whole step
  });

  it("steps by 1, 2 or 5 of a power of ten in US units and stays inside the metric range", () => {
    fc.assert(
      fc.property(anyParameter, (key) => {
        const parameter = parameters[key];
        const { min, max, step } = shownRange(parameter, "us");
        const metric = shownRange(parameter, "metric");
        const least = toShown(parameter.quantity, parameter.min, "us");
        const most = toShown(parameter.quantity, parameter.max, "us");
        const dust = 1e-6 * step;
        expect(min).toBeGreaterThanOrEqual(least - dust);
        expect(max).toBeLessThanOrEqual(most + dust);
        const lead = Number(step.toExponential().slice(0, 1));
        const same = step === metric.step;
        expect(same || [1, 2, 5].includes(lead)).toBe(true);
      }),
    );
  });
});

describe("digits after the point", () => {
  it("are more by one where the unit is about ten times as large, fewer where it is smaller", () => {
    expect(decimalsIn("lengthSmall", 0, "us")).toBe(1); // in against mm
    expect(decimalsIn("stiffness", 1, "us")).toBe(0); // lbf/in against N/mm
    expect(decimalsIn("mass", 0, "us")).toBe(0); // lb against kg
    expect(decimalsIn("pressure", 0, "metric")).toBe(0);
  });
});

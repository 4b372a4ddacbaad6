import fc from "fast-check";
import { expect, test } from "vitest";
import { type Quantity, quantities } from "../../../lib/units.js";
import {
  format,
  formatNumber,
  fromShown,
  shownUnit,
  toShown,
  unitOf,
} from "../../../site/say/units.js";

// NIST SP 811 (2008), B.8: factors as printed there, to the digits printed there
const published: [Quantity, number, number][] = [
  ["force", 4.448222, 6],
  ["mass", 0.4535924, 7],
  ["length", 0.3048, 10],
  ["lengthSmall", 0.0254, 10],
  ["volume", 3.785412e-3, 9],
  ["stiffness", 1.751268e2, 4],
  ["pressure", 6.894757e3, 3],
  ["acceleration", 9.80665, 10],
  ["speed", 0.44704, 10],
  ["torque", 1.355818, 6],
  ["area", 6.4516e-4, 12],
  ["inertia", 4.214011e-2, 8],
];

test.each(published)(
  "one US unit of %s is the SI number that NIST prints",
  (quantity, si, digits) => {
    expect(fromShown(quantity, 1, "us")).toBeCloseTo(si, digits);
  },
);

test("metric units are the ones on European gauges and scales", () => {
  expect(toShown("pressure", 200_000)).toBe(200);
  expect(toShown("stiffness", 45_000)).toBe(45);
  expect(toShown("speed", 10)).toBeCloseTo(36, 12);
  expect(toShown("rollStiffness", 180 / Math.PI)).toBeCloseTo(1, 12);
});

test("text carries the unit, a true minus sign and no negative zero", () => {
  expect(format("pressure", 200_000, 0)).toBe("200\u00a0kPa");
  expect(format("pressure", 200_000, 1, "us")).toBe("29.0\u00a0psi");
  expect(format("angle", (-1.5 * Math.PI) / 180, 1)).toBe("\u22121.5°");
  expect(formatNumber(-0.04, 1)).toBe("0.0");
});

test("a value shown and read back is the same value", () => {
  const names = Object.keys(quantities) as Quantity[];
  const value = fc.double({ min: -1e7, max: 1e7, noNaN: true });
  fc.assert(
    fc.property(fc.constantFrom(...names), value, fc.boolean(), (name, x, us) => {
      const system = us ? "us" : "metric";
      expect(unitOf(name, system)).toBe(shownUnit(name, system).unit);
      const back = fromShown(name, toShown(name, x, system), system);
      expect(Math.abs(back - x)).toBeLessThanOrEqual(2e-15 * Math.abs(x) + 1e-300);
    }),
  );
});

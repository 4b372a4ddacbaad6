import { expect, test } from "vitest";
import { coilSpringRate } from "../../../lib/spring/coil.js";

const coil = { wireDiameter: 0.012, meanDiameter: 0.1, activeCoils: 7 };

test("12 mm wire, 100 mm across, 7 coils give 29.36 N/mm", () => {
  // Shigley, Mechanical Engineering Design: Gd⁴/(8D³n), from memory
  expect(coilSpringRate({ ...coil, shearModulus: 79.3e9 })).toBeCloseTo(29363.7, 1);
});

test("one coil less in seven makes the spring 7/6 as stiff", () => {
  const shorter = coilSpringRate({ ...coil, activeCoils: 6 });
  expect(shorter / coilSpringRate(coil)).toBeCloseTo(7 / 6, 12);
});

test("a coil narrower than its wire is refused", () => {
  expect(() => coilSpringRate({ ...coil, meanDiameter: 0.01 })).toThrow(RangeError);
});

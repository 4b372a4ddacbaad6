import { expect, test } from "vitest";
import { antiRollBarRate } from "../../../lib/spring/bar.js";

const bar = {
  diameter: 0.023,
  length: 1.008,
  armLength: 0.25,
  shearModulus: 80e9,
  elasticModulus: 206e9,
};

test("twist alone gives 34.887 N/mm", () => {
  // GJ/(l·r²), and a finite-element beam frame of the same bar
  expect(antiRollBarRate({ ...bar, elasticModulus: Infinity })).toBeCloseTo(34887, 0);
});

test("arms that bend bring it down to 30.916 N/mm", () => {
  // a finite-element beam frame of the same bar agrees to 1e-9
  expect(antiRollBarRate(bar)).toBeCloseTo(30916.4, 1);
});

test("a bore of half the diameter costs a sixteenth of the stiffness", () => {
  const hollow = antiRollBarRate({ ...bar, innerDiameter: 0.0115 });
  expect(hollow / antiRollBarRate(bar)).toBeCloseTo(15 / 16, 12); // by hand: 1 − (1/2)⁴
});

test("a bar without metal is refused", () => {
  expect(() => antiRollBarRate({ ...bar, innerDiameter: 0.03 })).toThrow(/^bore of the bar/);
});

import { expect, test } from "vitest";
import { clubTyre } from "../../../lib/tyre/club-tyre.js";
import { frictionLineOf, withLoadSensitivity } from "../../../lib/tyre/friction-line.js";
import { frictionAtLoad, simpleTyre } from "../../../lib/tyre/load-sensitive.js";
import { magicFormula1987 } from "../../../lib/tyre/magic-formula-1987.js";

test("the published tyre of 1987 has the line 1.011 − 0.0221 for each kN", () => {
  // Bakker, Nyborg, Pacejka, SAE 870421 (1987): a2 and a1
  const line = frictionLineOf(magicFormula1987, [2000, 4000]);
  expect(line.frictionAtNoLoad).toBeCloseTo(1.011, 9);
  expect(line.loadSensitivity).toBeCloseTo(2.21e-5, 12);
});

test("the club tyre has the line of the simple tyre: 1.15 at 3 kN, 0.15 less for 3 kN more", () => {
  const line = frictionLineOf(clubTyre, [2000, 5000]);
  expect(line.frictionAtNoLoad).toBeCloseTo(1.3, 9); // by hand, from its coefficients
  expect(line.loadSensitivity).toBeCloseTo(5e-5, 12);
});

test("another sensitivity leaves the friction at its load", () => {
  const bent = withLoadSensitivity(simpleTyre, 8e-5, 3000);
  expect(frictionAtLoad(bent, 3000)).toBeCloseTo(frictionAtLoad(simpleTyre, 3000), 12);
  expect(frictionAtLoad(bent, 4000)).toBeCloseTo(1.15 - 0.08, 12); // by hand
});

test("loads out of order are refused", () => {
  expect(() => frictionLineOf(magicFormula1987, [4000, 2000])).toThrow(RangeError);
});

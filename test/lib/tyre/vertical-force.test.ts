import fc from "fast-check";
import { expect, test } from "vitest";
import { clubTyre, clubTyreCoefficients } from "../../../lib/tyre/club-tyre.js";
import { referenceTyre } from "../../../lib/tyre/magic-formula-61.js";
import {
  deflection61,
  nominalVerticalStiffness,
  verticalForce61,
  verticalStiffness61,
} from "../../../lib/tyre/vertical-force.js";
import { between } from "../evenly.js";

// Pacejka 2012, Appendix 3, Table A3.1: C = 209651 N/m at 4000 N, R = 0.3135 m, Q_FZ2 = 15.4,
// PFZ1 = 0.7098. By hand from eq. A3.4: C·R/FNOMIN = 16.43140, Q_FZ1 = √(269.9908 − 61.6) = 14.43575
const Q1 = 14.43575;
const Q2 = 15.4;

test.each([
  [0.005, 220e3],
  [0.015, 187e3],
  [0.025, 253e3],
])(
  "at %d m and %d Pa the published tyre carries what the book's equation says",
  (deflection, pressure) => {
    const x = deflection / 0.3135;
    const air = 1 + 0.7098 * (pressure / 220e3 - 1);
    const load = 4000 * air * (Q1 * x + Q2 * x ** 2);
    expect(referenceTyre.loadAt(deflection, { pressure })).toBeCloseTo(load, 1);
    expect(referenceTyre.deflection({ load, pressure }) * 1e3).toBeCloseTo(deflection * 1e3, 4);
  },
);

test("at nominal load and pressure the stiffness is the published 209 651 N/m", () => {
  expect(referenceTyre.verticalStiffness({ load: 4000, pressure: 220e3 })).toBeCloseTo(209651, 4);
});

// By hand: (4000/0.3135)·14.43575 for no load; 209.651·√((208.3908 + 2·61.6)/269.9908) for 8 kN
test("it is 184.19 N/mm at the first touch and 232.36 N/mm at 8 kN", () => {
  expect(referenceTyre.verticalStiffness({ load: 0 }) / 1e3).toBeCloseTo(184.19, 2);
  expect(referenceTyre.verticalStiffness({ load: 8000 }) / 1e3).toBeCloseTo(232.36, 1);
});

const leaning = { ...clubTyreCoefficients, Q_FZ3: 60 };
const state = fc.record({
  t: fc.constantFrom(clubTyreCoefficients, leaning, referenceTyre.coefficients),
  load: between(1, 12e3),
  pressure: between(150e3, 260e3),
  inclination: between(-0.1, 0.1),
});

test("deflection and load are each other's inverse, and stiffness is the slope", () => {
  fc.assert(
    fc.property(state, ({ t, load, pressure, inclination }) => {
      const deflection = deflection61(t, load, pressure, inclination);
      const force = (d: number) => verticalForce61(t, d, pressure, inclination);
      expect(force(deflection)).toBeCloseTo(load, 8);
      const slope = (force(deflection + 1e-6) - force(deflection - 1e-6)) / 2e-6;
      const stiffness = verticalStiffness61(t, load, pressure, inclination);
      expect(Math.abs(stiffness / slope - 1)).toBeLessThan(1e-3);
    }),
  );
});

test("the stiffness of the nominal deflection is that of eq. A3.5 at every pressure", () => {
  fc.assert(
    fc.property(state, ({ t, pressure }) => {
      const nominal = deflection61(t, t.FNOMIN, t.NOMPRES);
      const load = verticalForce61(t, nominal, pressure);
      const stiffness = verticalStiffness61(t, load, pressure);
      expect(stiffness / nominalVerticalStiffness(t, pressure)).toBeCloseTo(1, 12);
    }),
  );
});

test("lean either way counts the same, and stiffens a tyre whose Q_FZ3 is above zero", () => {
  const at = (inclination: number) => verticalStiffness61(leaning, 3000, 200e3, inclination);
  expect(at(0.1)).toBe(at(-0.1));
  expect(at(0.1)).toBeGreaterThan(at(0));
});

test("in the air nothing is squashed and nothing carried, and the first touch has a stiffness", () => {
  for (const load of [0, -500]) {
    expect(clubTyre.deflection({ load })).toBe(0);
    expect(clubTyre.verticalStiffness({ load })).toBeGreaterThan(0);
  }
  expect(clubTyre.loadAt(-0.01)).toBe(0);
});

test("the invented tyre stiffens with load about as the published one does", () => {
  const rise = (tyre: typeof clubTyre, load: number) =>
    tyre.verticalStiffness({ load }) / tyre.verticalStiffness({ load: 0 });
  expect(Math.abs(rise(clubTyre, 3000) - rise(referenceTyre, 4000))).toBeLessThan(0.05);
});

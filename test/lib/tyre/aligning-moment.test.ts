import fc from "fast-check";
import { expect, test } from "vitest";
import { clubTyre, clubTyreCoefficients } from "../../../lib/tyre/club-tyre.js";
import {
  type MagicFormula61Coefficients,
  withoutPull,
} from "../../../lib/tyre/magic-formula-61-coefficients.js";
import { combinedForce61 } from "../../../lib/tyre/magic-formula-61-combined.js";
import { aligningMoment61 } from "../../../lib/tyre/magic-formula-61-moment.js";
import { referenceTyreCoefficients } from "../../../lib/tyre/reference-tyre.js";
import { between } from "../evenly.js";

const lively: MagicFormula61Coefficients = {
  ...referenceTyreCoefficients, // terms that are zero in both tyres of the library
  QBZ3: 0.4,
  QBZ10: 0.3,
  QDZ4: 2,
  QDZ10: 0.2,
  QDZ11: -0.1,
  QEZ3: 0.2,
  PPZ2: 0.3,
  SSZ3: 0.1,
  SSZ4: 0.05,
  RBY4: 3,
  RVY3: 0.2,
};
const tyre = fc.constantFrom(clubTyreCoefficients, referenceTyreCoefficients, lively);
const state = fc.record({
  t: tyre,
  slip: fc.oneof(between(-0.5, 0.5), fc.constant(0)),
  slipAngle: between(-0.5, 0.5),
  load: between(100, 8000),
  pressure: between(190e3, 250e3),
  inclination: between(-0.09, 0.09),
});

/** A Magic Formula sine, in the book's letters. */
const sine = (B: number, C: number, D: number, E: number, x: number) =>
  D * Math.sin(C * Math.atan(B * x - Math.min(1, E) * (B * x - Math.atan(B * x))));
const cosine = (B: number, C: number, E: number, x: number) =>
  Math.cos(C * Math.atan(B * x - Math.min(1, E) * (B * x - Math.atan(B * x))));

/** Pure side force and what it is made of, ISO 8855 as in the book – eqs 4.E19–4.E30. */
function pureSide(
  t: MagicFormula61Coefficients,
  alpha: number,
  Fz: number,
  p: number,
  gamma: number,
) {
  const a = Math.tan(alpha);
  const g = Math.sin(gamma);
  const df = Fz / t.FNOMIN - 1;
  const dp = p / t.NOMPRES - 1;
  const mu = (t.PDY1 + t.PDY2 * df) * (1 + t.PPY3 * dp + t.PPY4 * dp ** 2) * (1 - t.PDY3 * g ** 2);
  const K =
    t.PKY1 *
    t.FNOMIN *
    (1 + t.PPY1 * dp) *
    (1 - t.PKY3 * Math.abs(g)) *
    Math.sin(t.PKY4 * Math.atan(Fz / t.FNOMIN / ((t.PKY2 + t.PKY5 * g ** 2) * (1 + t.PPY2 * dp))));
  const SVg = Fz * (t.PVY3 + t.PVY4 * df) * g;
  const SV = Fz * (t.PVY1 + t.PVY2 * df) + SVg;
  const Kg = Fz * (t.PKY6 + t.PKY7 * df) * (1 + t.PPY5 * dp);
  const SH = t.PHY1 + t.PHY2 * df + (Kg * g - SVg) / K;
  const x = a + SH;
  const E = (t.PEY1 + t.PEY2 * df) * (1 + t.PEY5 * g ** 2 - (t.PEY3 + t.PEY4 * g) * Math.sign(x));
  const B = K / (t.PCY1 * mu * Fz);
  return { force: sine(B, t.PCY1, mu * Fz, E, x) + SV, B, K, SH, SV };
}

/** Mz of the book's own signs, written anew from eqs 4.E31–4.E49 and 4.E71–4.E78. */
function bookMoment(
  t: MagicFormula61Coefficients,
  kappa: number,
  alpha: number,
  Fz: number,
  p: number,
  gamma: number,
  Fx: number,
  Fy: number,
): number {
  const a = Math.tan(alpha);
  const g = Math.sin(gamma);
  const df = Fz / t.FNOMIN - 1;
  const dp = p / t.NOMPRES - 1;
  const R = t.UNLOADED_RADIUS;
  const { B, K, SH, SV } = pureSide(t, alpha, Fz, p, gamma);
  const Kx =
    Fz * (t.PKX1 + t.PKX2 * df) * Math.exp(t.PKX3 * df) * (1 + t.PPX1 * dp + t.PPX2 * dp ** 2);
  const cosAlpha = Math.cos(alpha);
  const at = a + t.QHZ1 + t.QHZ2 * df + (t.QHZ3 + t.QHZ4 * df) * g;
  const ar = a + SH + SV / K;
  const equivalent = (angle: number) =>
    Math.hypot(angle, (Kx / K) * kappa) * (Math.sign(angle) || 1);
  const Bt = (t.QBZ1 + t.QBZ2 * df + t.QBZ3 * df ** 2) * (1 + t.QBZ4 * g + t.QBZ5 * Math.abs(g));
  const Dto = Fz * (R / t.FNOMIN) * (t.QDZ1 + t.QDZ2 * df) * (1 - t.PPZ1 * dp);
  const Dt = Dto * (1 + t.QDZ3 * Math.abs(g) + t.QDZ4 * g ** 2);
  const ate = equivalent(at);
  const Et =
    (t.QEZ1 + t.QEZ2 * df + t.QEZ3 * df ** 2) *
    (1 + (t.QEZ4 + t.QEZ5 * g) * (2 / Math.PI) * Math.atan(Bt * t.QCZ1 * ate));
  const trail = Dt * cosine(Bt, t.QCZ1, Et, ate) * cosAlpha;
  const Br = t.QBZ9 + t.QBZ10 * B * t.PCY1;
  const Dr =
    Fz *
    R *
    cosAlpha *
    (t.QDZ6 +
      t.QDZ7 * df +
      ((t.QDZ8 + t.QDZ9 * df) * (1 + t.PPZ2 * dp) + (t.QDZ10 + t.QDZ11 * df) * Math.abs(g)) * g);
  const Mzr = Dr * Math.cos(Math.atan(Br * equivalent(ar)));
  // eq. 4.E74: the side force without lean, under the same slip along
  const Byk = t.RBY1 * Math.cos(Math.atan(t.RBY2 * (a - t.RBY3)));
  const SHyk = t.RHY1 + t.RHY2 * df;
  const Eyk = t.REY1 + t.REY2 * df;
  const G = cosine(Byk, t.RCY1, Eyk, kappa + SHyk) / cosine(Byk, t.RCY1, Eyk, SHyk);
  const Fyprime = Math.max(0, G) * pureSide(t, alpha, Fz, p, 0).force;
  const s = R * (t.SSZ1 + t.SSZ2 * (Fy / t.FNOMIN) + (t.SSZ3 + t.SSZ4 * df) * g);
  return -trail * Fyprime + Mzr + s * Fx;
}

test("the moment is that of the book's equations, worked out again in the book's signs", () => {
  fc.assert(
    fc.property(state, ({ t, slip, slipAngle, load, pressure, inclination }) => {
      const force = combinedForce61(t, slip, slipAngle, load, pressure, inclination);
      // ISO 8855 counts both angles the other way; forces and moment are its own
      const book = bookMoment(
        t,
        slip,
        -slipAngle,
        load,
        pressure,
        -inclination,
        force.longitudinal,
        force.side,
      );
      const moment = aligningMoment61(t, slip, slipAngle, load, pressure, inclination);
      expect(Math.abs(moment - book)).toBeLessThan(1e-9 * load);
    }),
    { numRuns: 1000 },
  );
});

// By hand from Table A3.1: no slip shift, so at a vanishing slip angle Mz/Fy = −R·QDZ1 = −28.43 mm
test("the published tyre without pull has 28.4 mm of trail at nominal load", () => {
  // nor a push of its own at slip zero, which would act beside the middle
  const t = { ...withoutPull(referenceTyreCoefficients), PHX1: 0, PVX1: 0 };
  const moment = aligningMoment61(t, 0, 1e-6, 4000, 220e3, 0);
  const force = combinedForce61(t, 0, 1e-6, 4000, 220e3, 0).side;
  expect((-moment / force) * 1e3).toBeCloseTo(28.43, 2);
});

const clean = fc.constantFrom(
  withoutPull(clubTyreCoefficients),
  withoutPull(referenceTyreCoefficients),
  withoutPull(lively),
);

test("without pull a mirrored tyre gives the opposite moment, and straight ahead none", () => {
  fc.assert(
    fc.property(state, clean, ({ slip, slipAngle, load, pressure, inclination }, t) => {
      const moment = aligningMoment61(t, slip, slipAngle, load, pressure, inclination);
      const mirrored = aligningMoment61(t, slip, -slipAngle, load, pressure, -inclination);
      expect(mirrored).toBeCloseTo(-moment, 8);
      expect(aligningMoment61(t, slip, 0, load, pressure, 0)).toBeCloseTo(0, 12);
    }),
  );
});

test("a tyre that makes a force to the left is turned to the right, back to its way", () => {
  for (const t of [clubTyreCoefficients, withoutPull(referenceTyreCoefficients)])
    for (const slipAngle of [0.01, 0.03, 0.06])
      expect(aligningMoment61(t, 0, slipAngle, 3000, 200e3, 0)).toBeLessThan(0);
});

const trail = (slipAngle: number, load: number, pressure = 200e3) => {
  const t = clubTyreCoefficients;
  const moment = aligningMoment61(t, 0, slipAngle, load, pressure, 0);
  return (-1e3 * moment) / combinedForce61(t, 0, slipAngle, load, pressure, 0).side;
};

// from memory: 20–35 mm for car tyres, about nothing where the tyre slides
test("the invented tyre's trail is a believable one", () => {
  expect(trail(1e-4, 3000)).toBeGreaterThan(20);
  expect(trail(1e-4, 3000)).toBeLessThan(35);
  expect(trail(1e-4, 4500)).toBeGreaterThan(trail(1e-4, 3000));
  const falling = [0, 0.02, 0.05, 0.1, 0.15].map((angle) => trail(angle + 1e-4, 3000));
  expect(falling).toEqual([...falling].sort((a, b) => b - a));
  expect(Math.abs(trail(0.15, 3000))).toBeLessThan(10);
  // a harder tyre has the shorter patch, and the force acts nearer to its middle
  expect(trail(1e-4, 3000, 240e3)).toBeLessThan(trail(1e-4, 3000));
});

// from memory: at most some 30–80 N·m at 3 kN
test("the invented tyre's greatest moment is of a believable size", () => {
  const moments = Array.from({ length: 100 }, (_, i) =>
    Math.abs(aligningMoment61(clubTyreCoefficients, 0, i * 2e-3, 3000, 200e3, 0)),
  );
  expect(Math.max(...moments)).toBeGreaterThan(25);
  expect(Math.max(...moments)).toBeLessThan(80);
});

test("a tyre in the air has no moment", () => {
  for (const load of [0, -100])
    expect(clubTyre.aligningMoment({ load, slip: 0.1, slipAngle: 0.1 })).toBe(0);
});

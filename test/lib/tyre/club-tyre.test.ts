import { expect, test } from "vitest";
import { clubTyre, clubTyreCoefficients } from "../../../lib/tyre/club-tyre.js";
import {
  bestInclination,
  bestPressure,
  sideGrip,
} from "../../../lib/tyre/grip-against-pressure.js";
import {
  leanCostsPush,
  longitudinalFriction,
} from "../../../lib/tyre/magic-formula-61-longitudinal.js";
import { pairPeakSideForce } from "../../../lib/tyre/pair.js";
import { referenceTyreCoefficients } from "../../../lib/tyre/reference-tyre.js";

const degree = Math.PI / 180;

// An invented tyre has no outside figures: these are bands that a believable one lies in.

test("grip is best at a middle pressure, and both more and less cost grip", () => {
  expect(bestPressure(clubTyre, { load: 3000 })).toBeCloseTo(200e3, -2); // set by PPY3 = 0
  const grip = [160e3, 180e3, 200e3, 220e3, 240e3].map((pressure) =>
    sideGrip(clubTyre, { load: 3000, pressure }),
  );
  expect(Math.max(...grip)).toBe(grip[2]);
  expect(grip[1] ?? 0).toBeGreaterThan(grip[0] ?? 0);
  expect(grip[3] ?? 0).toBeGreaterThan(grip[4] ?? 0);
});

test("friction falls by 0.05 for each kN, by hand from PDY2 / FNOMIN", () => {
  const fall = sideGrip(clubTyre, { load: 2000 }) - sideGrip(clubTyre, { load: 3000 });
  expect(fall).toBeCloseTo(0.05, 9);
});

test("load transfer costs a pair grip", () => {
  const force = [0, 500, 1000, 1500, 2000].map((transfer) =>
    pairPeakSideForce(clubTyre, { meanLoad: 2600, transfer }),
  );
  for (const [i, value] of force.entries())
    if (i > 0) expect(value).toBeLessThan(force[i - 1] ?? 0);
});

test("a few degrees of lean into the turn are best, and more of them at more load", () => {
  const best = [2000, 3000, 4500].map((load) => bestInclination(clubTyre, { load }) / degree);
  expect(best[0]).toBeGreaterThan(2);
  expect(best[2]).toBeLessThan(5);
  expect(best).toEqual([...best].sort((a, b) => a - b));
});

test("peak slip angle and stiffness per load lie where road-legal sport tyres do", () => {
  // from memory: peaks of 5–10°, cornering stiffness of 10–30 per radian and load
  for (const load of [2000, 3000, 4500]) {
    const peak = clubTyre.peakSlipAngle({ load }) / degree;
    expect(peak).toBeGreaterThan(5);
    expect(peak).toBeLessThan(10);
    const perLoad = clubTyre.corneringStiffness({ load }) / load;
    expect(perLoad).toBeGreaterThan(10);
    expect(perLoad).toBeLessThan(30);
  }
});

test("vertical stiffness rises with pressure about as measured tyres do", () => {
  // Tse 2021, a 255/40R17 at 24, 27, 30, 33, 36 psi: N/mm; compared as rise over rise
  const psi = 6894.757;
  const measured = [228.5, 247.5, 262.5, 277.3, 292.7];
  const relative = (292.7 - 228.5) / 262.5;
  const at = (pressure: number) => clubTyre.verticalStiffness({ load: 3000, pressure });
  const ours = (at(36 * psi) - at(24 * psi)) / at(30 * psi);
  expect(measured[2]).toBe(262.5);
  expect(ours / relative).toBeGreaterThan(0.8);
  expect(ours / relative).toBeLessThan(1.25);
});

test("the contact patch grows with load and shrinks with pressure, both less than in step", () => {
  const area = (load: number, pressure: number) => clubTyre.contactPatch({ load, pressure }).area;
  const byLoad = Math.log(area(4000, 200e3) / area(2000, 200e3)) / Math.log(2);
  const byPressure = Math.log(area(3000, 240e3) / area(3000, 160e3)) / Math.log(1.5);
  // Tse 2024, measured exponents 0.87 and −0.51
  expect(Math.abs(byLoad - 0.87)).toBeLessThan(0.15);
  expect(Math.abs(byPressure + 0.51)).toBeLessThan(0.1);
});

test("a wheel that leans 3.5° has lost 3 % of its push, by hand from 8·sin²3.5°", () => {
  const push = (inclination: number) =>
    longitudinalFriction(clubTyreCoefficients, 3000, 200e3, inclination);
  expect(1 - push(3.5 * degree) / push(0)).toBeCloseTo(0.0298, 4);
  expect(push(-3.5 * degree)).toBe(push(3.5 * degree));
  expect(leanCostsPush(clubTyreCoefficients)).toBe(true);
  expect(leanCostsPush(referenceTyreCoefficients)).toBe(false); // published: PDX3 = 0
});

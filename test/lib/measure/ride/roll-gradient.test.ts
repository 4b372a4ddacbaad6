import { expect, test } from "vitest";
import { rollGradient } from "../../../../lib/measure/ride/roll-gradient.js";
import { GRAVITY } from "../../../../lib/units.js";

/** A corner as a phone feels it, by hand: f = a·(1 + g·K), and both lean by a degree or so. */
const K = 0.004; // rad/(m/s²)
const LEAN = 0.02; // rad
const at = (a: number) => ({ roll: K * a, felt: a * (1 + GRAVITY * K), spread: 1e-3 });
const leant = (a: number) => {
  const { roll, felt, spread } = at(a);
  return { roll: roll + LEAN, felt: felt + GRAVITY * LEAN, spread };
};

test("roll gradient of a car that leans by 4 mrad for each m/s², by hand, both ways", () => {
  const turns = [3, -4, 5, -6, 4];
  const found = rollGradient(turns.map(leant), turns.map(at));
  expect(found?.integrated?.value).toBeCloseTo(K, 12);
  expect(found?.balance?.value).toBeCloseTo(K, 12);
  expect(found?.byChance).toBeCloseTo(1, 9);
});

test("what road and phone lean is told where corners go to both sides, and not taken for roll", () => {
  const found = rollGradient([3, -4, 5, -6].map(leant), []);
  // at no force felt, of the line through roll + lean over felt + g·lean
  expect(found?.lean?.value).toBeCloseTo(LEAN - (K / (1 + GRAVITY * K)) * GRAVITY * LEAN, 12);
});

test("the balance says nothing of corners to one side, nor either way of two corners", () => {
  expect(rollGradient([3, 4, 5].map(leant), [])).toBeUndefined();
  expect(rollGradient([3, -4].map(leant), [3, -4].map(at))).toBeUndefined();
});

test("two ways that differ by more than their spreads are told to, and widen the band", () => {
  const turns = [3, -4, 5, -6, 4];
  const double = turns.map((a) => ({ ...leant(a), roll: leant(a).roll + 3 * K * a }));
  const found = rollGradient(double, turns.map(at));
  expect(found?.byChance).toBeLessThan(0.01);
  expect(found?.spread).toBeGreaterThan(found?.integrated?.spread ?? 0);
});

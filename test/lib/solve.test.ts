import fc from "fast-check";
import { expect, test } from "vitest";
import { findPeak, findRoot } from "../../lib/solve.js";

test("the root of cos x = x is the Dottie number", () => {
  // Kaplan 2007, Mathematics Magazine 80, 73–74
  expect(findRoot((x) => Math.cos(x) - x, 0, 1)).toBeCloseTo(0.7390851332151607, 12);
});

test("a steep, a flat and a kinked function are all solved in few steps", () => {
  const functions = [
    (x: number) => x ** 9 - 1e-3,
    (x: number) => Math.atan(50 * (x - 0.3)),
    (x: number) => (x < 0.7 ? (x - 0.7) * 1e-6 : (x - 0.7) * 1e6),
  ];
  for (const f of functions) {
    let calls = 0;
    const root = findRoot(
      (x) => {
        calls++;
        return f(x);
      },
      -1,
      2,
    );
    expect(Math.abs(f(root))).toBeLessThan(1e-6);
    expect(calls).toBeLessThan(80);
  }
});

test("every cubic with a known root inside the bracket gives that root back", () => {
  const inside = fc.double({ min: -0.99, max: 0.99, noNaN: true });
  fc.assert(
    fc.property(inside, (root) => {
      expect(findRoot((x) => (x - root) * (x * x + 1), -1, 1)).toBeCloseTo(root, 10);
    }),
  );
});

test("a bracket without a change of sign is refused", () => {
  expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow(RangeError);
  expect(() => findRoot(() => NaN, -1, 1)).toThrow(RangeError);
});

test("the peak of a parabola is its vertex", () => {
  const peak = findPeak((x) => 3 - (x - 0.25) ** 2, -1, 1);
  expect(peak.at).toBeCloseTo(0.25, 7);
  expect(peak.value).toBeCloseTo(3, 12);
});

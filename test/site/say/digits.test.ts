import { describe, expect, test } from "vitest";
import type { Band } from "../../../lib/certainty/band.js";
import { digitsFor } from "../../../site/say/digits.js";

describe("the digits of a figure", () => {
  const wide = (half: number): Band => {
    const at = (value: number) => ({ value, error: 0 });
    return { low: at(-half), middle: at(0), high: at(half), count: 1 };
  };
  // Particle Data Group, Review of Particle Physics, introduction 5.3, from memory: ±0.827 is told
  // as ±0.8, ±0.119 as ±0.12, ±0.367 as ±0.4
  test.each([
    [0.827, 1],
    [0.119, 2],
    [0.367, 1],
    [0.99, 1],
    [0.0956, 2],
    [3.2, 1],
    [12, 0],
    [800, 0],
  ])("of a band of ±%d are %i", (half, digits) => {
    expect(digitsFor(wide(half), "acceleration", 4)).toBe(digits);
  });

  test("are never more than without a band, and follow the unit", () => {
    expect(digitsFor(wide(0.001), "acceleration", 2)).toBe(2);
    expect(digitsFor(wide(0), "acceleration", 2)).toBe(2);
    expect(digitsFor(wide(0.5 * 9.80665), "acceleration", 2, "us")).toBe(1); // ±0.5 g
    expect(digitsFor(wide(0.05 * 9.80665), "acceleration", 2, "us")).toBe(2);
  });
});

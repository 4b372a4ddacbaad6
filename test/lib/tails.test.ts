import { describe, expect, test } from "vitest";
import { chiSquareAbove, shareWithinT, studentT } from "../../lib/tails.js";

// Quantiles as SciPy 1.17 gives them (scipy.stats.t and chi2), to all its digits.
const t95 = [
  [1, 6.313751514675037],
  [2, 2.9199855803537242],
  [3, 2.3533634348018233],
  [5, 2.0150483733330233],
  [8, 1.8595480375308973],
  [30, 1.697260886593957],
] as const;
const chi95 = [
  [1, 3.841458820694124],
  [2, 5.991464547107979],
  [3, 7.814727903251179],
  [5, 11.070497693516351],
  [8, 15.50731305586545],
  [30, 43.77297182574219],
] as const;
const chiTail = [
  [1, 0.08326451666355042],
  [2, 0.0820849986238988],
  [3, 0.07189777249646509],
  [5, 0.05137998348306955],
  [8, 0.030109079689220955],
  [30, 0.0006954949550972008],
] as const;

describe("Student's t", () => {
  test("has the quantiles of another library", () => {
    for (const [freedom, t] of t95) expect(studentT(0.9, freedom)).toBeCloseTo(t, 9);
    expect(shareWithinT(1.3, 30)).toBeCloseTo(0.7964990414618831, 12);
  });

  test("comes to the normal distribution with many readings, and to Cauchy's with two", () => {
    expect(studentT(0.9, 10_000)).toBeCloseTo(1.645006, 5); // 1.644854·(1 + (1.644854² + 1)/(4·10⁴))
    expect(studentT(0.5, 1)).toBeCloseTo(1, 12); // tan(π/4)
  });

  test("refuses what is no number of readings", () => {
    for (const freedom of [0, -1, 1.5, Number.NaN, 1e5])
      expect(() => studentT(0.9, freedom)).toThrow(/degrees of freedom/);
    expect(() => studentT(1, 3)).toThrow(/share is 1/);
  });
});

describe("the chi-square distribution", () => {
  test("has the quantiles and tails of another library", () => {
    for (const [freedom, square] of chi95)
      expect(chiSquareAbove(square, freedom)).toBeCloseTo(0.05, 9);
    for (const [freedom, tail] of chiTail)
      expect(chiSquareAbove(2 * freedom + 1, freedom)).toBeCloseTo(tail, 12);
  });

  test("is all at no misfit and nothing at a vast one", () => {
    for (const freedom of [1, 2, 7, 100]) {
      expect(chiSquareAbove(0, freedom)).toBe(1);
      expect(chiSquareAbove(1e5, freedom)).toBe(0);
    }
  });
});

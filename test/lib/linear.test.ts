import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastNorm, multiply, solveLinear, solveStable } from "../../lib/linear.js";

const numbers = (length: number) =>
  fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: length, maxLength: length });

describe("linear equations", () => {
  it("solves two equations by hand", () => {
    // 2x + y = 5 and x − y = 1 give x = 2, y = 1
    expect(
      solveLinear(
        [
          [2, 1],
          [1, -1],
        ],
        [5, 1],
      ),
    ).toEqual([2, 1]);
  });

  it("swaps rows when a pivot is zero", () => {
    expect(
      solveLinear(
        [
          [0, 1],
          [1, 0],
        ],
        [3, 4],
      ),
    ).toEqual([4, 3]);
  });

  it("gives unknowns that satisfy every equation", () => {
    fc.assert(
      fc.property(
        fc.array(numbers(6), { minLength: 6, maxLength: 6 }),
        numbers(6),
        (rows, right) => {
          const matrix = rows.map((row, i) => row.map((entry, j) => entry + (i === j ? 70 : 0)));
          multiply(matrix, solveLinear(matrix, right)).forEach((left, i) => {
            expect(left).toBeCloseTo(right[i] ?? Number.NaN, 9);
          });
        },
      ),
    );
  });

  it("refuses equations that repeat each other", () => {
    expect(() =>
      solveLinear(
        [
          [1, 2],
          [2, 4],
        ],
        [1, 2],
      ),
    ).toThrow(/do not fix the unknowns/);
  });

  it("solves what is stable, and refuses what would fall over", () => {
    // 2x + y = 5, x + 2y = 4 give x = 2, y = 1; x + 2y, 2x + y is a saddle
    const [x, y] = solveStable(
      [
        [2, 1],
        [1, 2],
      ],
      [5, 4],
    );
    expect(x).toBeCloseTo(2, 12);
    expect(y).toBeCloseTo(1, 12);
    expect(() =>
      solveStable(
        [
          [1, 2],
          [2, 1],
        ],
        [1, 1],
      ),
    ).toThrow(/nothing holds it/);
  });

  it("takes the shortest of many solutions", () => {
    // x + y = 2: the nearest point of that line to the origin is (1, 1)
    expect(leastNorm([[1, 1]], [2])).toEqual([1, 1]);
  });
});

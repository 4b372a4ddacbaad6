import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bandOf } from "../../../lib/certainty/band.js";
import { doubtShares } from "../../../lib/certainty/doubt-shares.js";
import { rankGroups } from "../../../lib/certainty/rank-groups.js";
import { holds, signHolds, wilson } from "../../../lib/certainty/sign-holds.js";
import { normalFrom, randomFrom, seedFrom } from "../../../lib/random.js";

const normals = (seed: number, count: number) => {
  const random = randomFrom(seedFrom(`seed ${seed}`));
  return Array.from({ length: count }, () => normalFrom(random));
};
const ends = ["low", "middle", "high"] as const;

describe("the band of samples", () => {
  test("of one value has no width and no error", () => {
    const exact = { value: 4.2, error: 0 };
    expect(bandOf([4.2, 4.2, 4.2])).toEqual({ low: exact, middle: exact, high: exact, count: 3 });
  });

  test("of a normal figure is 1.645 deviations to each side, to within its own errors", () => {
    const band = bandOf(normals(5, 4000).map((z) => 3 + 2 * z));
    const exact = { low: 3 - 2 * 1.644854, middle: 3, high: 3 + 2 * 1.644854 }; // quantiles of N(0, 1)
    for (const end of ends)
      expect(Math.abs(band[end].value - exact[end])).toBeLessThan(4 * band[end].error);
    // In theory √(q(1 − q)/n) over the density at the quantile – David and Nagaraja 2003, ch. 10
    expect(band.low.error).toBeGreaterThan(0.7 * 2 * 0.0334);
    expect(band.low.error).toBeLessThan(1.5 * 2 * 0.0334);
  });

  test("tells its errors as large as they are, for a figure that is not normal too", () => {
    const exact = { low: -Math.log(0.95), middle: Math.log(2), high: -Math.log(0.05) };
    const within = { low: 0, middle: 0, high: 0 };
    const tries = 400;
    for (let seed = 0; seed < tries; seed++) {
      const random = randomFrom(seed * 7919);
      const band = bandOf(Array.from({ length: 200 }, () => -Math.log(1 - random())));
      for (const end of ends)
        if (Math.abs(band[end].value - exact[end]) <= band[end].error) within[end] += 1;
    }
    for (const end of ends) {
      expect(within[end] / tries, end).toBeGreaterThan(0.62); // 0.683 for one standard error
      expect(within[end] / tries, end).toBeLessThan(0.9); // the further of both sides is told
    }
  });

  test("moves and grows as its samples do, and is turned over with them", () => {
    const samples = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 1 });
    const some = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(samples, some, (values, more) => {
        const [band, moved, turned] = [
          bandOf(values),
          bandOf(values.map((value) => 2 * value + more)),
          bandOf(values.map((value) => -value)),
        ];
        for (const end of ends) {
          expect(moved[end].value).toBeCloseTo(2 * band[end].value + more, 8);
          expect(moved[end].error).toBeCloseTo(2 * band[end].error, 8);
        }
        expect(turned.low.value).toBeCloseTo(-band.high.value, 8);
        expect(turned.low.error).toBeCloseTo(band.high.error, 8);
        expect(band.low.value).toBeLessThanOrEqual(band.high.value);
      }),
    );
  });

  test("is none without samples, or with one that is no number", () => {
    for (const samples of [[], [1, Number.NaN], [Infinity]])
      expect(() => bandOf(samples)).toThrow("samples must be finite numbers, at least one.");
  });
});

describe("how often a sign holds", () => {
  // Newcombe 1998, Statistics in Medicine 17, 857–872, table I, Wilson's score method, from memory
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])("is known from %i of %i as published", (held, count, from, to) => {
    const found = wilson(held, count, 1.959964);
    expect(found.from).toBeCloseTo(from, 4);
    expect(found.to).toBeCloseTo(to, 4);
  });

  test("is the same for a figure and its opposite", () => {
    const samples = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 1 });
    fc.assert(
      fc.property(samples, fc.double({ min: -1, max: 1, noNaN: true }), (values, figure) => {
        const opposite = signHolds(
          -figure,
          values.map((value) => -value),
        );
        expect(opposite).toEqual(signHolds(figure, values));
      }),
    );
  });

  test("is all where nothing ever moves", () => {
    expect(signHolds(0, [0, 0, -0]).share).toBe(1);
    expect(signHolds(1e-6, [-1e-6, 0, 1e-5], 1e-4).share).toBe(1);
    expect(signHolds(2e-4, [1e-5, 3e-4], 1e-4).share).toBe(0.5);
  });

  test("is sure, likely or not to be said, and never sure from a few samples", () => {
    expect(holds(98, 100).verdict).toBe("sure");
    expect(holds(90, 100).verdict).toBe("likely");
    expect(holds(70, 100).verdict).toBe("cannot say");
    expect(holds(10, 10).verdict).toBe("likely");
    expect(holds(3, 3).verdict).toBe("cannot say");
    expect(holds(2, 100).verdict).toBe("cannot say");
    expect(() => holds(0, 0)).toThrow("count is 0 but must be at least 1.");
  });
});

describe("whose doubt widens a band", () => {
  const samples = Array.from({ length: 1000 }, (_, k) => normals(k + 1, 5));
  const weights = [3, -2, 1, 0, 0];
  const figures = samples.map((z) => z.reduce((sum, zi, i) => sum + (weights[i] ?? 0) * zi, 7));
  const shares = doubtShares(["a", "b", "c", "d", "e"], samples, figures);

  test("is each number's part of the variance, where the figure goes in proportion", () => {
    expect(shares.slice(0, 3).map(({ path }) => path)).toEqual(["a", "b", "c"]);
    [9 / 14, 4 / 14, 1 / 14].forEach((share, i) => {
      expect(Math.abs((shares[i]?.share ?? 0) - share)).toBeLessThan(0.1);
    });
    for (const { share } of shares.slice(3)) expect(share).toBeLessThan(0.02);
  });

  test("names a number that has nothing to do with it in no more than one list in twenty", () => {
    const tries = 300;
    for (const count of [12, 60]) {
      const wrong = Array.from({ length: tries }, (_, t) => {
        const unrelated = Array.from({ length: count }, (_, k) => normals(9000 + 60 * t + k, 8));
        return doubtShares([..."abcdefgh"], unrelated, normals(t, count)).length > 0;
      });
      expect(wrong.filter(Boolean).length / tries).toBeLessThan(0.05 + 2 * 0.0126); // √(0.05·0.95/n)
    }
  });

  test("is nobody's where nothing is wide", () => {
    expect(doubtShares(["a"], [[1], [2], [3], [4]], [5, 5, 5, 5])).toEqual([]);
    expect(doubtShares(["a"], [[1], [2]], [5, 6])).toEqual([]);
  });
});

describe("ranks", () => {
  const [day, own] = [normals(3, 200), normals(4, 200)];
  const good = day.map((shared) => 2 + 10 * shared);
  const nearly = day.map((shared, i) => 2 + 10 * shared + (own[i] ?? 0));
  const poor = day.map((shared) => 1 + 10 * shared);

  test("tell apart what is worse in nearly every sample, though the bands overlap", () => {
    expect(rankGroups([poor, good])).toEqual([[1], [0]]);
  });

  test("put together what is better in some samples and worse in others", () => {
    const [first = [], second] = rankGroups([good, poor, nearly]);
    expect(first.toSorted()).toEqual([0, 2]);
    expect(second).toEqual([1]);
  });

  test("leave out what has no merit in any sample, and compare where both have one", () => {
    const none = day.map(() => Number.NaN);
    const some = poor.map((value, i) => (i < 100 ? value : Number.NaN));
    expect(rankGroups([none, good, some])).toEqual([[1], [2]]);
    expect(rankGroups([])).toEqual([]);
  });
});

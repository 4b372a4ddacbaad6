import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { combined } from "../../../lib/measure/combined.js";
import { curveThrough } from "../../../lib/measure/curve.js";
import { leastSquares, widened } from "../../../lib/measure/least-squares.js";
import { NINE_IN_TEN } from "../../../lib/measure/measured.js";
import { fromRepeats } from "../../../lib/measure/repeats.js";
import { through } from "../../../lib/measure/through.js";
import { normalFrom, randomFrom } from "../../../lib/random.js";
import { type Certified, longley, norris } from "./nist.js";

const within = (value: number, certified: number) => Math.abs(value / certified - 1);

function certifiedFit({ rows, right }: Certified) {
  const fit = leastSquares(
    rows,
    right.map((value) => ({ value, spread: 1 })),
  );
  const scatter = Math.sqrt(fit.chiSquare / fit.freedom);
  return { ...fit, scatter };
}

describe("least squares against certified regressions", () => {
  test.each([
    ["Norris", norris, 1e-11],
    ["Longley", longley, 1e-8], // columns nearly alike: condition 5·10⁹
  ] as const)("%s: numbers, spreads and scatter as certified", (_, data, tolerance) => {
    const { found, scatter } = certifiedFit(data);
    found.forEach(({ value, spread }, i) => {
      expect(within(value, data.found[i] ?? 0)).toBeLessThan(tolerance);
      expect(within(spread * scatter, data.spreads[i] ?? 0)).toBeLessThan(tolerance);
    });
    expect(within(scatter, data.scatter)).toBeLessThan(tolerance);
  });

  test("the residuals of the certified data are in no column's direction", () => {
    for (const data of [norris, longley]) {
      const { residuals, scatter } = certifiedFit(data);
      for (const j of data.found.keys()) {
        const along = data.rows.reduce(
          (sum, row, i) => sum + (row[j] ?? 0) * (residuals[i] ?? 0),
          0,
        );
        const size = Math.hypot(...data.rows.map((row) => row[j] ?? 0));
        expect(Math.abs(along) / (size * scatter)).toBeLessThan(1e-7);
      }
    }
  });

  test("refuses fewer readings than numbers, columns alike, and readings without doubt", () => {
    const one = { value: 1, spread: 1 };
    const refused = /do not fix/;
    expect(() => leastSquares([[1, 2]], [one])).toThrow(refused);
    expect(() =>
      leastSquares(
        [
          [1, 2],
          [2, 4],
          [3, 6],
        ],
        [one, one, one],
      ),
    ).toThrow(refused);
    expect(() => leastSquares([[1]], [{ value: 1, spread: 0 }])).toThrow(refused);
  });
});

describe("readings that scatter", () => {
  const readings = fc.tuple(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 2, max: 6 }));

  test("the mean of a few holds the truth nine times in ten, however few they are (2000 cases)", () => {
    const counts = new Map<number, number>();
    const tries = 2000;
    const random = randomFrom(77);
    for (const count of [2, 3, 5]) {
      for (let i = 0; i < tries; i++) {
        const values = Array.from({ length: count }, () => 40 + 3 * normalFrom(random));
        const { value, spread } = fromRepeats({ values, tool: 0 });
        if (Math.abs(value - 40) <= NINE_IN_TEN * spread)
          counts.set(count, (counts.get(count) ?? 0) + 1);
      }
      // four standard deviations of a count of 2000 with nine in ten: 2.7 %
      expect(Math.abs((counts.get(count) ?? 0) / tries - 0.9)).toBeLessThan(0.027);
    }
  });

  test("a slope holds the truth nine times in ten, whether the tool's doubt is known or too small", () => {
    for (const [tool, least, most] of [
      [0.5, 0.88, 0.97], // the tool's own doubt, never made narrower
      [0.01, 0.87, 0.93], // told far too small: widened by the scatter
    ] as const) {
      const random = randomFrom(5);
      let holds = 0;
      for (let i = 0; i < 1000; i++) {
        const on = [0, 1, 2, 3, 4].map((at) => ({
          at,
          read: { value: 2 + 3 * at + 0.5 * normalFrom(random), spread: tool },
        }));
        const [, slope] = curveThrough(on, 1).found;
        if (slope && Math.abs(slope.value - 3) <= NINE_IN_TEN * slope.spread) holds++;
      }
      expect(holds / 1000).toBeGreaterThan(least);
      expect(holds / 1000).toBeLessThan(most);
    }
  });

  test("a tool's doubt is not read away", () => {
    fc.assert(
      fc.property(readings, ([seed, count]) => {
        const random = randomFrom(seed);
        const values = Array.from({ length: count }, () => normalFrom(random));
        expect(fromRepeats({ values, tool: 0.7 }).spread).toBeGreaterThanOrEqual(0.7);
      }),
    );
  });

  test("as many readings as numbers have the spread of their tools, to whatever digit they are off", () => {
    const line = fc.tuple(
      fc.double({ min: -9, max: 9, noNaN: true }),
      fc.double({ min: 1, max: 9, noNaN: true }),
    );
    fc.assert(
      fc.property(line, ([value, apart]) => {
        const at = (x: number) => ({ at: x, read: { value: value * x, spread: 1 } });
        const [, slope] = curveThrough([at(0), at(apart)], 1).found;
        expect((slope?.spread ?? 0) * apart).toBeCloseTo(Math.SQRT2, 9);
      }),
    );
  });

  test("nothing is made narrower by agreeing too well", () => {
    const on = (value: number) => ({ value, spread: 1 });
    const fit = leastSquares([[1], [1], [1]], [on(2), on(2), on(2)]);
    expect(widened(fit).found).toEqual(fit.found);
  });
});

describe("several values of one number", () => {
  test("are weighted by the squares of their spreads", () => {
    const { value, spread } = combined([
      { value: 8, spread: 0.5 },
      { value: 8.6, spread: 1 },
    ]);
    expect(value).toBeCloseTo((8 * 4 + 8.6) / 5, 12);
    expect(spread).toBeCloseTo(1 / Math.sqrt(5), 12);
  });

  test("name the one that does not go with the others, wherever it stands", () => {
    for (const place of [0, 1, 2, 3]) {
      const values = [0, 0.4, -0.5, 0.2].map((value, i) => ({
        value: 20 + (i === place ? 6 : value),
        spread: 1,
      }));
      const { odd, byChance, spread } = combined(values);
      expect(odd).toBe(place);
      expect(byChance).toBeLessThan(0.05);
      expect(spread).toBeGreaterThan(0.5); // more than 1/√4
    }
  });

  test("name none of two, and none where all lie apart", () => {
    expect(
      combined([
        { value: 0, spread: 1 },
        { value: 9, spread: 1 },
      ]).odd,
    ).toBeUndefined();
    const apart = [0, 10, 20, 30, 40].map((value) => ({ value, spread: 1 }));
    expect(combined(apart).odd).toBeUndefined();
  });
});

test("a doubt goes through a product as its shares add in squares, and tells whose it is", () => {
  const force = through(
    {
      mass: { value: 50, spread: 1 },
      gravity: { value: 9.81, spread: 0 },
      share: { value: 0.5, spread: 0.02 },
    },
    ({ mass, gravity, share }) => ({ newtons: mass * gravity * share }),
  ).newtons;
  expect(force.spread / force.value).toBeCloseTo(Math.hypot(1 / 50, 0.02 / 0.5), 4);
  expect(force.from.map(({ name }) => name)).toEqual(["share", "mass"]);
  expect(force.from[0]?.share).toBeCloseTo(0.8, 4); // 4² of 4² + 2²
});

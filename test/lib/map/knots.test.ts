import fc from "fast-check";
import { expect, test } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { chebyshev, knotsOf, polynomialKnots, straightKnots } from "../../../lib/map/knots.js";
import { type MapAxis, mapAxesOf } from "../../../lib/map/map-axis.js";
import { gridOf } from "../../../lib/map/map-grid.js";
import { numbersBetween } from "../../../lib/map/numbers-between.js";
import { between } from "../evenly.js";

const weightsAt = ({ at, weigh }: ReturnType<typeof straightKnots>, place: number): number[] => {
  const into = new Float64Array(at.length);
  weigh(place, into);
  return [...into];
};

const smoothKnots = (count: number) => polynomialKnots(chebyshev(count));
const placesOf = (axis: MapAxis) => gridOf({ along: axis, up: axis }).along;

const everyKind = [
  smoothKnots(4),
  smoothKnots(7),
  straightKnots(2),
  straightKnots(5),
  ...mapAxesOf(demoCar).map((axis) => knotsOf(axis, placesOf(axis))),
];

test("weights sum to one anywhere, and at a knot that knot alone counts", () => {
  fc.assert(
    fc.property(fc.constantFrom(...everyKind), between(0, 1), (knots, place) => {
      const sum = weightsAt(knots, place).reduce((a, b) => a + b);
      expect(sum).toBeCloseTo(1, 12);
    }),
  );
  for (const knots of everyKind) {
    expect([knots.at[0], knots.at.at(-1)]).toEqual([0, 1]);
    knots.at.forEach((place, own) => {
      weightsAt(knots, place).forEach((weight, i) => {
        expect(weight).toBeCloseTo(i === own ? 1 : 0, 12);
      });
    });
  }
});

test("four smooth knots on two axes give a product of two cubics back, whole", () => {
  const [along, up] = [smoothKnots(4), smoothKnots(4)];
  const surface = (x: number, y: number) => (1 - 2 * x + 3 * x ** 3) * (2 + y - y ** 2);
  const known = up.at.flatMap((y) => along.at.map((x) => [surface(x, y), 7]));
  const blend = numbersBetween(along, up, known);
  fc.assert(
    fc.property(between(0, 1), between(0, 1), (x, y) => {
      const [value = 0, same = 0] = blend(x, y);
      expect(value).toBeCloseTo(surface(x, y), 10);
      expect(same).toBeCloseTo(7, 10);
    }),
  );
});

test("straight knots join their values by straight lines", () => {
  const known = [[0], [10], [0], [0], [10], [0]];
  const blend = numbersBetween(straightKnots(3), straightKnots(2), known);
  expect(blend(0.25, 0.5)[0]).toBeCloseTo(5, 12);
  expect(blend(0.5, 1)[0]).toBeCloseTo(10, 12);
  expect(blend(0.9, 0)[0]).toBeCloseTo(2, 12);
});

test("knots of every lever are among the places that are worked out, those of a bar its positions", () => {
  for (const axis of mapAxesOf(demoCar)) {
    const places = placesOf(axis);
    const { at } = knotsOf(axis, places);
    for (const knot of at) expect(places).toContain(knot);
    if (axis.parameter === "barPosition") expect(at).toEqual(places);
    else expect(at.length).toBeLessThan(7);
  }
});

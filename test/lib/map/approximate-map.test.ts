import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { type PhaseName, phaseNames } from "../../../lib/balance/phases.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { applyChange } from "../../../lib/change/apply.js";
import {
  type ApproximateMap,
  approximateMap,
  MAP_ERROR_ALLOWED,
} from "../../../lib/map/approximate-map.js";
import { exactMap } from "../../../lib/map/exact-map.js";
import { finerMap } from "../../../lib/map/finer-map.js";
import { changeTo, mapAxesOf } from "../../../lib/map/map-axis.js";
import { cellAt } from "../../../lib/map/map-cell.js";
import { gridOf } from "../../../lib/map/map-grid.js";
import type { MapOf } from "../../../lib/map/map-of.js";
import type { SetUpMap } from "../../../lib/map/set-up-map.js";
import { otherCars } from "../../../site/chapter/other-cars.js";
import { axisOf, mapOver } from "./maps.js";

vi.setConfig({ testTimeout: 180_000 });

const cars: readonly Car[] = [demoCar, ...otherCars].filter((car) => mapAxesOf(car).length > 1);

/** A car, two of its levers and a part of the corner. */
const anyMap = (levers: (key: string) => boolean) =>
  fc.constantFrom(...cars).chain((car) => {
    const keys = mapAxesOf(car)
      .map(({ key }) => key)
      .filter(levers);
    const pair = fc.shuffledSubarray(
      keys.length > 1 ? keys : ["front-barPosition", "rear-barPosition"],
      {
        minLength: 2,
        maxLength: 2,
      },
    );
    return fc
      .tuple(pair, fc.constantFrom<PhaseName>(...phaseNames))
      .map(([[along = "", up = ""], phase]) => mapOver(along, up, phase, car));
  });

const somePlaces = fc.array(fc.tuple(fc.nat(1e6), fc.nat(1e6)), { minLength: 3, maxLength: 3 });

/** The greatest error of a map at some places of it, from nothing there. */
function errorOf(of: MapOf, map: SetUpMap, places: readonly (readonly [number, number])[]): number {
  const { along, up } = gridOf(of);
  const errors = places.map(([i, j]) => {
    const [column, row] = [i % along.length, j % up.length];
    const at = row * along.length + column;
    const cell = cellAt(of, { x: along[column] ?? 0, y: up[row] ?? 0 });
    if (cell.state !== "balanced" || map.state[at] !== 0) return 0;
    return Math.max(
      Math.abs((map.understeerMargin[at] ?? 0) - cell.understeerMargin),
      Math.abs((map.lateralAcceleration[at] ?? 0) - cell.lateralAcceleration),
    );
  });
  return Math.max(...errors);
}

/** The greatest error that maps of a few rounds say of themselves. */
function saidOf(of: MapOf, first: ApproximateMap, base?: SetUpMap): number {
  const others = [1, 2, 3].map((round) => approximateMap(of, gridOf(of), { base, round }).error);
  return Math.max(first.error, ...others);
}

describe("an approximate map", () => {
  test("is within what it may be off, or says that it is not, at any place of any car's map", () => {
    fc.assert(
      fc.property(
        anyMap(() => true),
        somePlaces,
        (of, places) => {
          const map = approximateMap(of);
          const error = errorOf(of, map, places);
          if (error <= MAP_ERROR_ALLOWED) return;
          expect(2 * saidOf(of, map)).toBeGreaterThan(error);
        },
      ),
      { numRuns: 16 },
    );
  });

  test("is within it for every lever but springs, which meet stops and lift wheels", () => {
    fc.assert(
      fc.property(
        anyMap((key) => !key.includes("springRate")),
        somePlaces,
        (of, places) => {
          expect(errorOf(of, approximateMap(of), places)).toBeLessThan(MAP_ERROR_ALLOWED);
        },
      ),
      { numRuns: 12 },
    );
  });

  test("is what a map known in full is, where nothing has moved since", () => {
    const of = mapOver("front-springRate", "rear-springRate");
    const grid = gridOf(of, 10);
    const base = exactMap(of, grid);
    const map = approximateMap(of, grid, { base });
    expect(map.error).toBeLessThan(0.01);
    map.understeerMargin.forEach((margin, i) => {
      expect(Math.abs(margin - (base.understeerMargin[i] ?? 0))).toBeLessThan(0.02);
    });
  });

  test.each(phaseNames)(
    "keeps in %s the bends of a map known in full a little way off, better than by itself",
    (phase) => {
      const of = mapOver("front-springRate", "rear-springRate", phase);
      const pressure = axisOf(demoCar, "front-tyrePressure");
      const car = applyChange(demoCar, changeTo(pressure, pressure.present + pressure.step));
      const [grid, moved] = [gridOf(of, 13), { ...of, car }];
      const exact = exactMap(moved, grid);
      const worst = (map: SetUpMap) =>
        Math.max(
          ...map.understeerMargin.map((one, i) => Math.abs(one - (exact.understeerMargin[i] ?? 0))),
        );
      const near = worst(approximateMap(moved, grid, { base: exactMap(of, grid) }));
      expect(near).toBeLessThan(0.6 * worst(approximateMap(moved, grid)));
    },
  );

  test("says nothing of being off at the positions of two bars, which are all worked out", () => {
    const of = mapOver("front-barPosition", "rear-barPosition", "turn-in");
    const map = approximateMap(of);
    expect(map.understeerMargin).toHaveLength(20);
    expect(map.error).toBeLessThan(0.01);
  });

  test("draws no balance between a place that has one and a place that has none", () => {
    const range = { min: 2e3, max: 90e3, step: 2e3 };
    const adjusters = { ...demoCar.front.adjusters, springRate: range };
    const soft = { ...demoCar, front: { ...demoCar.front, adjusters } };
    const of = mapOver("front-springRate", "rear-camber", "middle", soft);
    const grid = gridOf(of, 16);
    const [map, exact] = [approximateMap(of, grid), exactMap(of, grid)];
    expect(exact.state.some((state) => state > 0)).toBe(true);
    exact.state.forEach((state, i) => {
      if (state > 0) expect(map.state[i]).toBeGreaterThan(0);
    });
    expect(map.state.some((state) => state === 0)).toBe(true);
  });

  test("is refused in a sentence where the car can stand nowhere on it", () => {
    const of = mapOver("rear-camber", "fuel");
    const front = { ...demoCar.front, spring: { ...demoCar.front.spring, rate: 100 } };
    expect(() => approximateMap({ ...of, car: { ...demoCar, front } })).toThrow(RangeError);
  });
});

test("a finer map is straight between the places of a coarse one, and the same on them", () => {
  const of = mapOver("front-camber", "rear-camber");
  const coarse = exactMap(of, gridOf(of, 3));
  const fine = finerMap(coarse, gridOf(of, 5));
  for (const [row, column] of [
    [0, 0],
    [1, 2],
    [2, 1],
  ] as const)
    expect(fine.understeerMargin[2 * row * 5 + 2 * column]).toBeCloseTo(
      coarse.understeerMargin[row * 3 + column] ?? 0,
      12,
    );
  const [left = 0, right = 0] = coarse.lateralAcceleration;
  expect(fine.lateralAcceleration[1]).toBeCloseTo((left + right) / 2, 12);
});

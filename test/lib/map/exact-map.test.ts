import { describe, expect, test, vi } from "vitest";
import { carBalance } from "../../../lib/balance/car-balance.js";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { phaseNames } from "../../../lib/balance/phases.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { exactMap, exactRow } from "../../../lib/map/exact-map.js";
import { cellAt, placeStates } from "../../../lib/map/map-cell.js";
import { gridOf } from "../../../lib/map/map-grid.js";
import { carOnMap, type MapOf, valueAt } from "../../../lib/map/map-of.js";
import { readMap } from "../../../lib/map/map-reading.js";
import { hasLimits } from "../../../lib/map/set-up-map.js";
import { otherCars } from "../../../site/chapter/other-cars.js";
import { mapOver } from "./maps.js";

vi.setConfig({ testTimeout: 120_000 });

/** Every place of a map from nothing, by itself. */
function eachPlace(of: MapOf, side: number) {
  const { along, up } = gridOf(of, side);
  return up.flatMap((y) => along.map((x) => carOnMap(of, valueAt(of.along, x), valueAt(of.up, y))));
}

const grown = otherCars.find(({ name }) => name === "Harrier") as Car;

describe("a map worked out in full", () => {
  test.each([
    mapOver("front-springRate", "rear-springRate", "middle"),
    mapOver("front-barPosition", "rear-tyrePressure", "power on"),
    mapOver("rear-camber", "fuel", "turn-in", grown),
  ])("is at each place of a coarse one what the car there gives by itself, %#", (of) => {
    const map = exactMap(of, gridOf(of, 4));
    eachPlace(of, 4).forEach(({ handling }, i) => {
      const alone = carBalance(handling, of.driving);
      expect(map.lateralAcceleration[i]).toBeCloseTo(alone.lateralAcceleration, 9);
      expect(map.understeerMargin[i]).toBeCloseTo(alone.understeerMargin, 9);
      expect(map.state[i]).toBe(0);
    });
  });

  test.each(phaseNames)(
    "is so in %s on rows that are walked along, as near as solving is",
    (phase) => {
      const of = mapOver("front-springRate", "rear-springRate", phase);
      const grid = gridOf(of);
      const row = exactRow(of, grid, 21);
      for (let column = 2; column < 64; column += 5) {
        const alone = cellAt(of, { x: grid.along[column] ?? 0, y: grid.up[21] ?? 0 });
        expect(row.lateralAcceleration[column]).toBeCloseTo(alone.lateralAcceleration, 3);
        const margin = row.understeerMargin[column] ?? 0;
        expect(Math.abs(margin - alone.understeerMargin)).toBeLessThan(0.02);
      }
    },
  );

  test("follows no top of the path that another one has grown above", () => {
    const of = mapOver("front-springRate", "rear-springRate");
    const grid = gridOf(of);
    const row = exactRow(of, grid, 42); // where one top of the path gives way to another
    for (let column = 32; column < 46; column++) {
      const alone = cellAt(of, { x: grid.along[column] ?? 0, y: grid.up[42] ?? 0 });
      expect(row.lateralAcceleration[column]).toBeCloseTo(alone.lateralAcceleration, 3);
    }
  });

  test("gives each row to the last bit as that row gives by itself, in any order", () => {
    const of = mapOver("front-springRate", "rear-barPosition");
    const grid = gridOf(of, 6);
    const map = exactMap(of, grid);
    for (const row of [2, 0, 3]) {
      const part = map.understeerMargin.subarray(row * map.columns, (row + 1) * map.columns);
      expect([...exactRow(of, grid, row).understeerMargin]).toEqual([...part]);
    }
  });

  test("has of a bar its positions and nothing between", () => {
    const of = mapOver("front-barPosition", "rear-barPosition");
    const { columns, rows, understeerMargin } = exactMap(of);
    expect([columns, rows]).toEqual([5, 4]);
    expect(understeerMargin[5 + 2]).toBeCloseTo(readMap(of, 3, 2).balance.understeerMargin, 1);
  });

  test("moves towards understeer everywhere with a stiffer front bar", () => {
    const of = mapOver("front-springRate", "rear-springRate");
    const front = demoCar.front;
    if (front.bar === undefined) throw new Error("the demo car has a front bar");
    const stiffer = { ...demoCar, front: { ...front, bar: { ...front.bar, position: 5 } } };
    const grid = gridOf(of, 4);
    const [before, after] = [exactMap(of, grid), exactMap({ ...of, car: stiffer }, grid)];
    after.understeerMargin.forEach((margin, i) => {
      expect(margin).toBeGreaterThan(before.understeerMargin[i] ?? Infinity);
    });
  });
});

test("the present set-up reads as the car does by itself", () => {
  const of = mapOver("front-springRate", "rear-springRate");
  const alone = carBalance(handlingCarOf(demoCar), of.driving);
  const { balance, broken } = readMap(of, 60e3, 50e3);
  expect(balance.understeerMargin).toBeCloseTo(alone.understeerMargin, 9);
  expect(broken).toEqual([]);
});

describe("limits of the class", () => {
  test("a place is outside where a reading names a broken limit, and inside where it names none", () => {
    const of = mapOver("front-seatTurns", "rear-tyrePressure");
    const { room, columns } = exactMap(of, gridOf(of, 7));
    room.forEach((steps, i) => {
      const x = valueAt(of.along, (i % columns) / 6);
      const y = valueAt(of.up, Math.floor(i / columns) / 6);
      const { broken } = readMap(of, x, y);
      expect(steps < 0).toBe(broken.length > 0);
    });
    expect(Math.min(...room)).toBeLessThan(0);
    expect(Math.max(...room)).toBeGreaterThan(0);
  });

  test("a class without limits gives no room to be short of", () => {
    const { limits: _, ...free }: Car = demoCar;
    const of = mapOver("fuel", "driver", "middle", free);
    expect(hasLimits(exactMap(of, gridOf(of, 2)))).toBe(false);
    expect(readMap(of, 20, 80).broken).toEqual([]);
  });
});

describe("a place without a balance", () => {
  const statesOf = (of: MapOf) =>
    [...exactMap(of, gridOf(of, 3)).state].map((state) => placeStates[state]);

  test("is marked where it cannot brake so hard", () => {
    const of = mapOver("front-camber", "rear-camber");
    const hard = { ...of, driving: { speed: 25, longitudinalAcceleration: -15 } };
    expect(new Set(statesOf(hard))).toEqual(new Set(["cannot give"]));
  });

  test("is marked where it would fall over on its springs, and only there", () => {
    const range = { min: 100, max: 90e3, step: 5e3 };
    const soft = {
      ...demoCar,
      front: { ...demoCar.front, adjusters: { ...demoCar.front.adjusters, springRate: range } },
    };
    const states = statesOf(mapOver("front-springRate", "rear-camber", "middle", soft));
    expect(states.filter((_, i) => i % 3 === 0)).toEqual(Array(3).fill("cannot stand"));
    expect(states.filter((_, i) => i % 3 > 0)).toEqual(Array(6).fill("balanced"));
  });
});

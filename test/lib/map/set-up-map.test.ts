import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { carBalance } from "../../../lib/balance/car-balance.js";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { type Phase, phases } from "../../../lib/balance/phases.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { type MapAxis, mapAxesOf } from "../../../lib/map/map-axis.js";
import { mapError } from "../../../lib/map/map-error.js";
import { readMap } from "../../../lib/map/map-reading.js";
import { type MapOf, setUpMap, valueAt } from "../../../lib/map/set-up-map.js";
import { between } from "../evenly.js";

vi.setConfig({ testTimeout: 60_000 });

const axes = mapAxesOf(demoCar);
const named = (key: string): MapAxis => {
  const axis = axes.find((one) => one.key === key);
  if (axis === undefined) throw new Error(`no axis ${key}`);
  return axis;
};
const mapOf = (along: string, up: string, phase: Phase = {}): MapOf => ({
  car: demoCar,
  measured: demoCar,
  along: named(along),
  up: named(up),
  driving: { speed: 25, ...phase },
});

describe("a map against cars worked out in full", () => {
  const pairs = axes.flatMap((along, i) => axes.slice(i + 1).map((up) => [along.key, up.key]));

  test("is off by less than 0.005 m/s² for every pair of levers of the workbook's car", () => {
    for (const [along = "", up = ""] of pairs)
      expect(mapError(mapOf(along, up)), `${along} × ${up}`).toBeLessThan(0.005);
  });

  test.each(Object.entries(phases))("is so in %s at places between all knots", (_, phase) => {
    fc.assert(
      fc.property(fc.constantFrom(...pairs), between(0, 1), between(0, 1), (pair, x, y) => {
        const [along = "", up = ""] = pair;
        fc.pre(!`${along}${up}`.includes("bar"));
        const of = mapOf(along, up, phase);
        const map = setUpMap(of, 9);
        const [column, row] = [Math.round(8 * x), Math.round(8 * y)];
        const at = row * 9 + column;
        const { balance } = readMap(of, valueAt(of.along, column / 8), valueAt(of.up, row / 8));
        expect(Math.abs((map.understeerMargin[at] ?? 0) - balance.understeerMargin)).toBeLessThan(
          0.01,
        );
        expect(
          Math.abs((map.lateralAcceleration[at] ?? 0) - balance.lateralAcceleration),
        ).toBeLessThan(0.01);
      }),
      { numRuns: 60 },
    );
  });

  test("is exact at the positions of two bars", () => {
    const of = mapOf("front-barPosition", "rear-barPosition");
    const map = setUpMap(of, 5, 4);
    for (let i = 0; i < 20; i++) {
      const { balance } = readMap(of, 1 + (i % 5), 1 + Math.floor(i / 5));
      expect(map.understeerMargin[i]).toBeCloseTo(balance.understeerMargin, 3);
    }
  });
});

test("the present set-up reads as the car does by itself", () => {
  const of = mapOf("front-springRate", "rear-springRate");
  const alone = carBalance(handlingCarOf(demoCar), of.driving);
  const { balance, broken } = readMap(of, 60e3, 50e3);
  expect(balance.understeerMargin).toBeCloseTo(alone.understeerMargin, 9);
  expect(broken).toEqual([]);
});

describe("limits of the class", () => {
  test("a place is outside where a reading names a broken limit, and inside where it names none", () => {
    const of = mapOf("front-seatTurns", "rear-tyrePressure");
    const { room } = setUpMap(of, 13);
    for (let i = 0; i < room.length; i++) {
      const x = valueAt(of.along, (i % 13) / 12);
      const y = valueAt(of.up, Math.floor(i / 13) / 12);
      const { broken } = readMap(of, x, y);
      if (Math.abs(room[i] ?? 0) > 0.05) expect((room[i] ?? 0) < 0).toBe(broken.length > 0);
    }
    expect(Math.min(...room)).toBeLessThan(0);
    expect(Math.max(...room)).toBeGreaterThan(0);
  });

  test("a class without limits gives no room to be short of", () => {
    const { limits: _, ...free }: Car = demoCar;
    const of = { ...mapOf("fuel", "driver"), car: free, measured: free };
    expect(setUpMap(of, 4).room).toHaveLength(0);
    expect(readMap(of, 20, 80).broken).toEqual([]);
  });
});

test("a stiffer front bar moves the whole map towards understeer", () => {
  const of = mapOf("front-springRate", "rear-springRate");
  const front = demoCar.front;
  if (front.bar === undefined) throw new Error("the demo car has a front bar");
  const stiffer = { ...demoCar, front: { ...front, bar: { ...front.bar, position: 5 } } };
  const [before, after] = [setUpMap(of, 8), setUpMap({ ...of, car: stiffer }, 8)];
  after.understeerMargin.forEach((margin, i) => {
    expect(margin).toBeGreaterThan(before.understeerMargin[i] ?? Infinity);
  });
});

test("a car that would fall over is refused in a sentence", () => {
  const of = mapOf("front-springRate", "rear-springRate");
  const wide = { ...of.along, min: 100 };
  const soft = {
    ...demoCar,
    front: { ...demoCar.front, adjusters: { springRate: { min: 100, max: 90e3, step: 5e3 } } },
  };
  expect(() => setUpMap({ ...of, car: soft, along: wide }, 4)).toThrow(RangeError);
});

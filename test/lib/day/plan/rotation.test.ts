import fc from "fast-check";
import { expect, test } from "vitest";
import { rotation } from "../../../../lib/day/plan/rotation.js";

const day = fc.record({
  drivers: fc.integer({ min: 1, max: 12 }).map((n) => Array.from({ length: n }, (_, i) => `d${i}`)),
  cars: fc.integer({ min: 1, max: 4 }),
  run: fc.integer({ min: 1, max: 20 }),
});

test("everybody drives once in every run, and nobody is in two cars at once", () => {
  fc.assert(
    fc.property(day, ({ drivers, cars, run }) => {
      const rounds = rotation(drivers, cars, run);
      const driven = rounds.flatMap(({ stints }) => stints.map(({ driver }) => driver));
      expect([...driven].sort()).toEqual([...drivers].sort());
      for (const { stints, waiting } of rounds) {
        const used = stints.map(({ car }) => car);
        expect(new Set(used).size).toBe(used.length);
        expect(stints.length + waiting.length).toBe(drivers.length);
      }
    }),
  );
});

test("as few rounds as drivers over cars allow, rounded up", () => {
  fc.assert(
    fc.property(day, ({ drivers, cars, run }) => {
      expect(rotation(drivers, cars, run)).toHaveLength(Math.ceil(drivers.length / cars));
    }),
  );
});

test("each driver keeps one car through all runs", () => {
  fc.assert(
    fc.property(day, ({ drivers, cars, run }) => {
      const carOf = (round: ReturnType<typeof rotation>) =>
        new Map(round.flatMap(({ stints }) => stints.map(({ driver, car }) => [driver, car])));
      const [first, later] = [
        carOf(rotation(drivers, cars, 1)),
        carOf(rotation(drivers, cars, run)),
      ];
      for (const driver of drivers) expect(later.get(driver)).toBe(first.get(driver));
    }),
  );
});

test("who goes first moves on from run to run", () => {
  const first = [1, 2, 3, 4].map((run) => rotation(["a", "b", "c"], 1, run)[0]?.stints[0]?.driver);
  expect(first).toEqual(["a", "b", "c", "a"]);
});

test("a name that stands twice, no driver or no car is refused with a sentence", () => {
  expect(() => rotation(["a", "a"], 1)).toThrow('driver "a" stands twice.');
  expect(() => rotation([], 1)).toThrow("number of drivers is 0 but must be from 1 to 200.");
  expect(() => rotation(["a"], 0)).toThrow("number of cars is 0 but must be from 1 to 50.");
});

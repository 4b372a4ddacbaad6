import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { formatCar, parseCar } from "../../../lib/car/file/parse.js";
import { sampleOf } from "../../../lib/certainty/sample-car.js";
import { uncertainNumbersOf } from "../../../lib/certainty/uncertain-numbers.js";
import { applyChange } from "../../../lib/change/apply.js";
import { possibleChanges } from "../../../lib/change/steps.js";
import { normalFrom, randomFrom, seedFrom } from "../../../lib/random.js";
import { anyCar } from "../car/any-car.js";

vi.setConfig({ testTimeout: 60_000 });

const numbers = uncertainNumbersOf(demoCar);
const sample = (k: number, seed = 1) => sampleOf(demoCar, numbers, seed, k);
const many = Array.from({ length: 2000 }, (_, k) => sample(2 * k).deviations); // one of each pair

const meanOf = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const correlation = (a: readonly number[], b: readonly number[]) =>
  meanOf(a.map((value, i) => value * (b[i] ?? 0)));

describe("the samples of a car", () => {
  test("are the same for the same seed, in whatever order they are asked for", () => {
    const [late, early] = [sample(17), sample(3)];
    expect(sample(3).of(demoCar)).toEqual(early.of(demoCar));
    expect(sample(17).of(demoCar)).toEqual(late.of(demoCar));
    expect(sample(3, 2).deviations).not.toEqual(early.deviations);
  });

  test("do not move when the file comes to say of one more number that it is exact", () => {
    const fewer = numbers.filter(({ path }) => path !== "front.track");
    const [with_, without] = [sample(5), sampleOf(demoCar, fewer, 1, 5)];
    const at = numbers.findIndex(({ path }) => path === "front.track");
    expect(without.deviations).toEqual(with_.deviations.filter((_, i) => i !== at));
  });

  test("come in pairs that are off the opposite way", () => {
    expect(sample(9).deviations).toEqual(sample(8).deviations.map((deviation) => -deviation));
  });

  test("are normally distributed, number by number and from number to number apart", () => {
    const columns = numbers.map((_, i) => many.map((deviations) => deviations[i] ?? 0));
    // With n = 2000 the mean strays by 1/√n = 0.022, the mean square by √(2/n) = 0.032, a
    // correlation by 0.022: five times that is left to chance for all numbers together.
    for (const column of columns) {
      expect(Math.abs(meanOf(column))).toBeLessThan(0.112);
      expect(Math.abs(correlation(column, column) - 1)).toBeLessThan(0.158);
      const beyond = column.filter((value) => Math.abs(value) > 1.959964).length / 2000;
      expect(Math.abs(beyond - 0.05)).toBeLessThan(0.025); // five times √(0.05·0.95/n)
    }
    const pairs = columns.flatMap((a, i) => columns.slice(i + 1).map((b) => correlation(a, b)));
    expect(Math.max(...pairs.map(Math.abs))).toBeLessThan(0.112);
    const next = columns.map((column) => correlation(column.slice(1), column));
    expect(Math.max(...next.map(Math.abs))).toBeLessThan(0.112);
  });

  test("of seeds that are near each other have nothing in common", () => {
    const first = (seed: number) =>
      Array.from({ length: 500 }, (_, k) => sample(2 * k, seed).deviations[0] ?? 0);
    expect(Math.abs(correlation(first(1), first(2)))).toBeLessThan(0.224); // five times 1/√500
  });
});

test("any car has samples that its file can hold and that can stand", () => {
  fc.assert(
    fc.property(anyCar, fc.integer({ min: 0, max: 99 }), (car, k) => {
      const off = sampleOf(car, uncertainNumbersOf(car), 7, k).of(car);
      expect(parseCar(formatCar(off)).faults).toBeUndefined();
    }),
    { numRuns: 60 },
  );
});

test("a change is the same made before a sample is taken or after", () => {
  const close = (a: Car, b: Car) => {
    for (const number of numbers) {
      const [x, y] = [number.get(a), number.get(b)];
      expect(Math.abs(x - y), number.path).toBeLessThan(1e-9 + 1e-9 * Math.abs(x));
    }
  };
  const { of } = sample(4);
  const unbarred = possibleChanges(demoCar);
  expect(unbarred.length).toBeGreaterThan(30);
  for (const change of unbarred)
    close(applyChange(of(demoCar), change), of(applyChange(demoCar, change)));
});

test("a sampled car can be changed as far as the car itself, at the end of a range too", () => {
  const { min = 0, max = 0, step = 1 } = demoCar.front.adjusters?.springRate ?? {};
  for (const rate of [min, max]) {
    const front = { ...demoCar.front, spring: { ...demoCar.front.spring, rate } };
    const car = { ...demoCar, front };
    const own = uncertainNumbersOf(car);
    const by = rate === min ? max - min : -step;
    for (let k = 0; k < 20; k++) {
      const off = sampleOf(car, own, 1, k).of(car);
      const changed = applyChange(off, { lever: "springRate", end: "front", by });
      expect(changed.front.spring.rate - off.front.spring.rate).toBeCloseTo(by, 6);
    }
  }
});

test("numbers that look random are normal when two of them make one", () => {
  const random = randomFrom(seedFrom("any text"));
  const values = Array.from({ length: 20_000 }, () => normalFrom(random));
  expect(Math.abs(meanOf(values))).toBeLessThan(0.036); // five times 1/√n
  expect(Math.abs(correlation(values, values) - 1)).toBeLessThan(0.05); // five times √(2/n)
  expect(values.every(Number.isFinite)).toBe(true);
  expect(seedFrom("any text")).not.toBe(seedFrom("any tex"));
  expect(seedFrom("foobar")).toBe(0xbf9cf968); // FNV-1a of "foobar" – RFC 9923, appendix, from memory
});

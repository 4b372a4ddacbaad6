import { demoCar, formatCar } from "@rollbook/lib";
import fc from "fast-check";
import { beforeEach, expect, it, vi } from "vitest";
import { asCars, chosenCar } from "../../../site/store/cars.js";
import { documentOf } from "../../../site/store/document.js";
import { keptBelow, recall } from "../../../site/store/texts.js";
import { FUZZ_RUNS, hurt, junk } from "../../fuzz.js";

vi.setConfig({ testTimeout: 60_000 + 10 * FUZZ_RUNS });

const values = new Map<string, string>();
beforeEach(() => {
  values.clear();
  vi.stubGlobal("localStorage", {
    get length() {
      return values.size;
    },
    key: (index: number) => [...values.keys()][index] ?? null,
    getItem: (name: string) => values.get(name) ?? null,
    setItem: (name: string, value: string) => void values.set(name, value),
    removeItem: (name: string) => values.delete(name),
  });
});

const car = { ...JSON.parse(formatCar(demoCar)), name: "Kept" };
const sound = JSON.stringify({ cars: [car], current: "Kept" });
const broken = fc.oneof(
  hurt(sound),
  junk.map((value) => JSON.stringify(value) ?? ""),
  fc.string(),
);

it("whatever the device gives back, the cars are sound and the course has one", () => {
  fc.assert(
    fc.property(broken, broken, (now, before) => {
      values.set("rollbook:cars", now);
      values.set("rollbook:cars:before", before);
      const { now: kept } = documentOf({ key: "cars", empty: { cars: [] }, read: asCars });
      for (const { name, wheelbase } of [...kept.value.cars, chosenCar(kept.value)]) {
        expect(typeof name).toBe("string");
        expect(Number.isFinite(wheelbase)).toBe(true);
      }
    }),
    { numRuns: FUZZ_RUNS },
  );
});

it("a sound value before a broken one is found again", () => {
  fc.assert(
    fc.property(broken, (now) => {
      values.set("rollbook:count", now);
      values.set("rollbook:count:before", "3");
      const asThree = (value: unknown) => (value === 3 ? 3 : undefined);
      expect(recall("count", asThree)).toBe(3);
    }),
    { numRuns: FUZZ_RUNS },
  );
});

it("names and values of others on the device are left alone and never fail a listing", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.string(), fc.string())), (others) => {
      values.clear();
      for (const [name, value] of others) values.set(name, value);
      values.set("rollbook:day:1", "{");
      expect(keptBelow("day:").get("1")).toBe("{");
    }),
    { numRuns: FUZZ_RUNS / 10 },
  );
});

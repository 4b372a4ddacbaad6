import { beforeEach, describe, expect, it, vi } from "vitest";
import { demoCar, formatCar } from "../../../lib/index.js";
import { asCars, type Cars, chosenCar } from "../../../site/store/cars.js";
import { documentOf, followOtherPages, forget, letAsideGo } from "../../../site/store/document.js";
import { keptAside, refusals, unkept } from "../../../site/store/told.js";

const asNumber = (kept: unknown) => (typeof kept === "number" ? kept : undefined);
const values = new Map<string, string>();
const state = { full: false };
const listeners: ((event: { key: string; newValue?: null }) => void)[] = [];

beforeEach(() => {
  values.clear();
  state.full = false;
  vi.stubGlobal("localStorage", {
    get length() {
      return values.size;
    },
    key: (index: number) => [...values.keys()][index] ?? null,
    getItem: (name: string) => values.get(name) ?? null,
    setItem(name: string, value: string) {
      if (state.full) throw new DOMException("full", "QuotaExceededError");
      values.set(name, value);
    },
    removeItem: (name: string) => values.delete(name),
  });
  vi.stubGlobal("addEventListener", (_: string, listener: (typeof listeners)[0]) =>
    listeners.push(listener),
  );
});

let keys = 0;
const fresh = (more: { formerKey?: string } = {}) => {
  keys += 1;
  const key = `n${keys}`;
  return { key, made: () => documentOf({ key, empty: 0, read: asNumber, ...more }) };
};

describe("a document of the store", () => {
  it("is empty at first, and is what was set from then on, also after the page is opened again", async () => {
    const { made } = fresh();
    const one = made();
    expect(one.now.value).toBe(0);
    expect(await one.set(5)).toBe(true);
    expect(made().now.value).toBe(5);
  });

  it("is followed by whoever reads it", async () => {
    const one = fresh().made();
    const seen: number[] = [];
    one.now.subscribe((value) => seen.push(value));
    await one.set(2);
    one.clear();
    expect(seen).toEqual([0, 2, 0]);
  });

  it("reads what older courses kept: bare, under another name, or with the time of writing", () => {
    const bare = fresh();
    values.set(`rollbook:${bare.key}`, "7");
    expect(bare.made().now.value).toBe(7);
    const renamed = fresh({ formerKey: "old-name" });
    values.set("rollbook:old-name", "8");
    expect(renamed.made().now.value).toBe(8);
    const timed = fresh();
    values.set(`rollbook:${timed.key}`, '{"stamp":1900000000000,"value":9}');
    expect(timed.made().now.value).toBe(9);
  });

  it("the later write wins though the device's clock went back", async () => {
    const { key, made } = fresh();
    values.set(`rollbook:${key}`, '{"stamp":1900000000000,"value":9}');
    await made().set(10);
    expect(JSON.parse(values.get(`rollbook:${key}`) ?? "")).toEqual({
      stamp: 1900000000001,
      version: 1,
      value: 10,
    });
  });

  it("says no where the device refuses, counts it, and holds the value for this visit", async () => {
    const one = fresh().made();
    const before = refusals.value;
    state.full = true;
    expect(await one.set(4)).toBe(false);
    expect(one.now.value).toBe(4);
    expect(one.inFirst).toBe(false);
    state.full = false;
    expect(await one.set(6)).toBe(true);
    expect(one.inFirst).toBe(true);
    expect(refusals.value).toBe(before + 1);
  });

  it("shows at once what another open page wrote, but nothing older than its own", async () => {
    const { key, made } = fresh();
    const one = made();
    await one.set(3);
    followOtherPages();
    const tell = () => {
      for (const listener of listeners) listener({ key: `rollbook:${key}` });
    };
    values.set(`rollbook:${key}`, '{"stamp":9,"value":6}');
    tell();
    expect(one.now.value).toBe(6);
    values.set(`rollbook:${key}`, '{"stamp":2,"value":1}');
    tell();
    expect(one.now.value).toBe(6);
  });

  it("brings together what two open pages changed, field by field, and shows it in both", async () => {
    const empty: Record<string, number> = { a: 1, b: 1 };
    keys += 1;
    const shape = { key: `n${keys}`, empty, read: (kept: unknown) => kept as typeof empty };
    const [one, two] = [documentOf(shape), documentOf(shape)];
    await Promise.all([one.set({ a: 2, b: 1 }), two.setTyped({ a: 1, b: 2 })]);
    expect(two.now.value).toEqual({ a: 2, b: 2 });
    expect(documentOf(shape).now.value).toEqual({ a: 2, b: 2 });
    await one.set({ ...one.now.value, a: 3 });
    expect(one.now.value).toEqual({ a: 3, b: 2 });
  });

  it("has both changes though the other page wrote at the same moment, under the same number", async () => {
    const { key, made } = fresh();
    const shape = { key, empty: {}, read: (kept: unknown) => kept as object };
    made();
    const one = documentOf<object>(shape);
    followOtherPages();
    await one.set({ mine: 1 });
    values.set(`rollbook:${key}`, '{"stamp":1,"version":1,"value":{"theirs":1}}');
    for (const listener of listeners) listener({ key: `rollbook:${key}` });
    expect(one.now.value).toEqual({ mine: 1, theirs: 1 });
    expect(JSON.parse(values.get(`rollbook:${key}`) ?? "").value).toEqual({ mine: 1, theirs: 1 });
  });

  it("goes where another page has forgotten it", async () => {
    const { key, made } = fresh();
    const one = made();
    await one.set(3);
    followOtherPages();
    for (const listener of listeners) listener({ key: `rollbook:${key}`, newValue: null });
    expect(one.now.value).toBe(0);
  });

  it("keeps aside what it cannot read, through every later write, until that is let go", async () => {
    for (const strange of ['{"stamp":4,"version":2,"value":7}', '"word"', "{ broken"]) {
      const { key, made } = fresh();
      values.set(`rollbook:${key}`, strange);
      const one = made();
      expect(one.now.value).toBe(0);
      await one.open();
      expect(keptAside.value.get(key)).toEqual([strange]);
      for (const value of [1, 2, 3]) await one.set(value);
      const again = made();
      await again.open();
      expect(again.now.value).toBe(3);
      expect(keptAside.value.get(key)).toEqual([strange]);
      await letAsideGo(key, [strange]);
      expect(keptAside.value.has(key)).toBe(false);
      expect(values.get(`rollbook:${key}`)).not.toContain("aside");
    }
  });

  it("tells which value the device refused for as long as it does", async () => {
    const { key, made } = fresh();
    const one = made();
    state.full = true;
    await one.setTyped(4);
    expect(unkept.value.get(key)).toBe(4);
    state.full = false;
    await one.setTyped(5);
    expect(unkept.value.has(key)).toBe(false);
  });

  it("is forgotten with all of its kind, and no other", async () => {
    const mine = documentOf({ key: "kind/a", empty: 0, read: asNumber });
    const other = fresh().made();
    await mine.set(1);
    await other.set(2);
    await forget("kind/");
    expect([mine.now.value, other.now.value]).toEqual([0, 2]);
    expect(values.has("rollbook:kind/a")).toBe(false);
  });
});

it("cars that a course kept under its former name are still the reader's", () => {
  const car = { ...JSON.parse(formatCar(demoCar)), name: "Kept" };
  values.set("rollbook:garage", JSON.stringify({ cars: [car], current: "Kept" }));
  const shape = { key: "cars", formerKey: "garage", empty: { cars: [] } as Cars, read: asCars };
  expect(chosenCar(documentOf(shape).now.value).name).toBe("Kept");
});

it("a kept car that is out of range by now is put aside, and is there after any number of others", async () => {
  const car = { ...JSON.parse(formatCar(demoCar)), name: "Kept" };
  const short = { ...car, name: "Short", wheelbase: 1.19 };
  values.set("rollbook:cars", JSON.stringify({ cars: [car, short], current: "Short" }));
  const made = () => documentOf({ key: "cars", empty: { cars: [] } as Cars, read: asCars });
  const cars = made();
  for (const name of ["B", "C", "D"])
    await cars.set({ cars: [...cars.now.value.cars, { ...demoCar, name }] });
  const again = made();
  await again.open();
  expect(again.now.value.cars.map(({ name }) => name)).toEqual(["Kept", "B", "C", "D"]);
  expect(keptAside.value.get("cars")).toEqual([short]);
});

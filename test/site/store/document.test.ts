import { beforeEach, describe, expect, it, vi } from "vitest";
import { demoCar, formatCar } from "../../../lib/index.js";
import { asCars, type Cars, chosenCar } from "../../../site/store/cars.js";
import { documentOf, followOtherPages, forget, refusals } from "../../../site/store/document.js";

const asNumber = (kept: unknown) => (typeof kept === "number" ? kept : undefined);
const values = new Map<string, string>();
const state = { full: false };
const listeners: ((event: { key: string }) => void)[] = [];

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
      value: 10,
    });
  });

  it("says no where the device refuses, counts it, and holds the value for this visit", async () => {
    const one = fresh().made();
    const before = refusals.value;
    state.full = true;
    expect(await one.set(4)).toBe(false);
    expect(one.now.value).toBe(4);
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

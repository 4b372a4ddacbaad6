import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { drop, keep, keptBelow, recall } from "../../../site/store/texts.js";

/** A device's store that can be told to be full. */
function device() {
  const values = new Map<string, string>();
  const state = { full: false };
  const localStorage = {
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
  };
  return { values, state, localStorage };
}

const asNumber = (value: unknown) => (typeof value === "number" ? value : undefined);

describe("the store on the device", () => {
  let here = device();
  beforeEach(() => {
    here = device();
    vi.stubGlobal("localStorage", here.localStorage);
  });
  afterEach(() => {
    drop("count");
    vi.unstubAllGlobals();
  });

  it("gives back what was kept", () => {
    expect(keep("count", 3)).toBe(true);
    expect(recall("count", asNumber)).toBe(3);
  });

  it("gives back the value before, where the last one cannot be read", () => {
    keep("count", 3);
    keep("count", 4);
    for (const broken of ["{", '"four"', ""]) {
      here.values.set("rollbook:count", broken);
      expect(recall("count", asNumber)).toBe(3);
    }
  });

  it("says so when the device is full, and loses neither the old value nor, for this visit, the new one", () => {
    keep("count", 3);
    here.state.full = true;
    expect(keep("count", 4)).toBe(false);
    expect(here.values.get("rollbook:count")).toBe("3");
    expect(recall("count", asNumber)).toBe(4);
  });

  it("holds values for this visit where the browser keeps nothing at all", () => {
    vi.stubGlobal("localStorage", undefined);
    expect(keep("count", 5)).toBe(false);
    expect(recall("count", asNumber)).toBe(5);
  });

  it("forgets both the value and the one before", () => {
    keep("count", 3);
    keep("count", 4);
    drop("count");
    expect(recall("count", asNumber)).toBeUndefined();
    expect(here.values.size).toBe(0);
  });

  it("lists what is kept below a name: what it could not keep too, what was there before not", () => {
    keep("log/1", "one");
    keep("log/1", "uno");
    here.values.set("rollbook:log/2", "{ broken");
    here.state.full = true;
    keep("log/3", "three");
    expect([...keptBelow("log/")]).toEqual([
      ["1", '"uno"'],
      ["2", "{ broken"],
      ["3", '"three"'],
    ]);
    vi.stubGlobal("localStorage", undefined);
    expect([...keptBelow("log/")]).toEqual([["3", '"three"']]);
    for (const name of ["log/1", "log/2", "log/3"]) drop(name);
  });
});

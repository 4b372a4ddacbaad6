import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { merged } from "../../../site/store/merged.js";

const value = fc.jsonValue({ maxDepth: 3 });
const group = fc.dictionary(fc.constantFrom("a", "b", "c", "d"), value);

describe("what two pages made of one value", () => {
  it("has both changes where they are of different fields, however deep", () => {
    const base = { name: "day", car: { front: 1, rear: 1 } };
    const mine = { ...base, car: { front: 2, rear: 1 } };
    const theirs = { name: "Sunday", car: { front: 1, rear: 3 } };
    expect(merged(base, mine, theirs)).toEqual({ name: "Sunday", car: { front: 2, rear: 3 } });
  });

  it("has every entry that either page added, and none that one took out", () => {
    const base = [{ id: "a", x: 1 }, { id: "b" }];
    const mine = [{ id: "a", x: 2 }, { id: "b" }, { id: "mine" }];
    const theirs = [{ id: "a", x: 1, y: 1 }, { id: "theirs" }];
    const both = [{ id: "a", x: 2, y: 1 }, { id: "theirs" }, { id: "mine" }];
    expect(merged(base, mine, theirs)).toEqual(both);
    expect(merged(["A"], ["A", "M"], ["A", "T"])).toEqual(["A", "T", "M"]);
    expect(merged([1, 2, 3, 4], [9, 2, 3, 4], [1, 2, 4])).toEqual([9, 2, 4]);
    expect(merged([1, 2, 3, 4], [1, 2, 4], [7, 8, 2, 3, 4])).toEqual([7, 8, 2, 4]);
  });

  it("is mine where both changed the same, and what was changed where the other took it out", () => {
    expect(merged({ a: 1 }, { a: 2 }, { a: 3 })).toEqual({ a: 2 });
    expect(merged({ a: 1 }, {}, { a: 3 })).toEqual({ a: 3 });
    expect(merged({ a: 1 }, { a: 2 }, {})).toEqual({ a: 2 });
    expect(merged({ a: 1, b: 1 }, { b: 1 }, { a: 1, b: 2 })).toEqual({ b: 2 });
  });

  it("is the other's where one changed nothing, and what both say where they agree", () => {
    fc.assert(
      fc.property(value, value, (base, other) => {
        expect(merged(base, base, other)).toEqual(other);
        expect(merged(base, other, base)).toEqual(other);
        expect(merged(base, other, other)).toEqual(other);
      }),
    );
  });

  it("has every field as the one page that changed it has it", () => {
    fc.assert(
      fc.property(group, group, group, (base, mine, theirs) => {
        const own = (of: object, name: string) =>
          Object.hasOwn(of, name) ? of[name as keyof typeof of] : undefined;
        const text = (one: unknown) => JSON.stringify(one);
        const both = merged(base, mine, theirs) as object;
        for (const name of ["a", "b", "c", "d"]) {
          const [b, m, t] = [base, mine, theirs].map((of) => own(of, name));
          if (text(b) === text(m)) expect(text(own(both, name))).toBe(text(t));
          else if (text(b) === text(t)) expect(text(own(both, name))).toBe(text(m));
        }
      }),
    );
  });
});

import { describe, expect, test } from "vitest";
import { inRoot } from "../../site/build/paths.js";
import { proseBelow, proseIn } from "../../site/commands/floors/prose.js";

test("lib holds no prose but the sentences of refusals, of faults in files, and names in data", () => {
  expect(proseBelow(inRoot("lib"))).toEqual([]);
});

describe("prose is found", () => {
  test("in a text of three words, in whatever quotes", () => {
    expect(proseIn("const a = 'The car pushes.';")).toEqual(["The car pushes."]);
    const template = "const a = (x: number) => `It is {x} too far`;".replace("{", "$" + "{");
    expect(proseIn(template)).toHaveLength(1);
    expect(proseIn('const why = found ? "It moves little there" : "";')).toHaveLength(1);
  });

  test("not in comments, types, codes, paths and names", () => {
    expect(proseIn("/** The car pushes here. */ // It does so there\nconst a = 1;")).toEqual([]);
    expect(proseIn('type A = "one two three four"; const code: A[] = [];')).toEqual([]);
    expect(proseIn('const a = "towards-the-rear-side"; const b = "front left";')).toEqual([]);
    expect(proseIn('import { b } from "../../change/change.js"; export const a = b;')).toEqual([]);
  });

  test("not in what a refusal says, or the field of a check that refuses", () => {
    const said = '"code", "The car cannot stand there."';
    expect(proseIn(`throw new Refusal(${said});`)).toEqual([]);
    expect(proseIn('requireInRange("roll stiffness of the tyres", k, 1, 2);')).toEqual([]);
    expect(proseIn(`throw new Error(${said});`)).toEqual(["The car cannot stand there."]);
    expect(proseIn('tell(requireInRange("a", 1), "The car pushes here.");')).toHaveLength(1);
  });
});

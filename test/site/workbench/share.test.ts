import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { editsFrom, linkEndOf, longestLinkEnd } from "../../../site/workbench/model/share.js";
import { FUZZ_RUNS } from "../../fuzz.js";
import { packed } from "./packed.js";

const edits = fc.dictionary(fc.string({ minLength: 1 }), fc.string({ unit: "grapheme" }));

describe("edited cells in a link", () => {
  it("come back as they were, whatever they hold", async () => {
    await fc.assert(
      fc.asyncProperty(edits, async (given) => {
        const end = await linkEndOf(given);
        expect(end).toMatch(/^#edited=[\w-]+$/);
        const back = await editsFrom(end ?? "");
        expect(Object.entries(back ?? {})).toEqual(Object.entries(given));
      }),
    );
  });

  it("are refused, never half read, from corrupted links", async () => {
    const end = (await linkEndOf({ a: "const speed = 30;", b: "x".repeat(200) })) ?? "";
    const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_%<\u0000";
    const broken = fc
      .tuple(fc.nat(end.length - 1), fc.constantFrom(...letters), fc.nat(3))
      .map(([at, letter, cut]) => (end.slice(0, at) + letter + end.slice(at + cut)).slice(0, 300));
    await fc.assert(
      fc.asyncProperty(broken, async (hash) => {
        const back = await editsFrom(hash);
        if (back) expect(Object.values(back).every((text) => typeof text === "string")).toBe(true);
      }),
      { numRuns: FUZZ_RUNS },
    );
  });

  it("are refused where there is nothing, what no link holds, or something else than texts", async () => {
    for (const hash of [
      "#edited=",
      "#edited=%%%",
      "#edited=<img src=x onerror=alert(1)>",
      `#edited=${"A".repeat(20_000)}`,
      "#edited=AAAA",
      await packed(["last"]),
      await packed({ last: 1 }),
      await packed({ last: { length: 1 } }),
      await packed(null),
      await packed({ last: "x".repeat(5_000_000) }),
    ])
      expect(await editsFrom(hash), hash.slice(0, 60)).toBeUndefined();
  });

  it("are not unpacked without end", async () => {
    const hash = await packed({ a: "x".repeat(8_000_000) });
    expect(hash.length).toBeLessThan(longestLinkEnd);
    expect(await editsFrom(hash)).toBeUndefined();
  });

  it("make no link that is too long", async () => {
    const noise = Array.from({ length: 9_000 }, (_, i) => (i * 7919 * 7919) % 9973).join(" ");
    expect(await linkEndOf({ a: noise })).toBeUndefined();
    expect(await linkEndOf({ a: "x".repeat(500_000) })).toBeUndefined();
  });
});

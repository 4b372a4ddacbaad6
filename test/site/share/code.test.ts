import fc from "fast-check";
import decodeQR from "qr/decode.js";
import { describe, expect, it } from "vitest";
import { codeOf, longestLink } from "../../../site/hand-over/code.js";
import { photograph } from "./photograph.js";

describe("a QR code", () => {
  it("is read back as the link it was made from, whatever the link", () => {
    fc.assert(
      fc.property(fc.webUrl({ withFragments: true, withQueryParameters: true }), (link) => {
        fc.pre(link.length <= longestLink);
        const { path, side } = codeOf(link);
        expect(decodeQR(photograph(path, side))).toBe(link);
      }),
      { numRuns: 25 },
    );
  });

  it("has four light modules around it", () => {
    const { path, side } = codeOf("https://club.example/rollbook/");
    const corners = [...path.matchAll(/M(\d+) (\d+)h(\d+)/g)].map((match) =>
      match.slice(1).map(Number),
    );
    const left = Math.min(...corners.map(([x = 0]) => x));
    const right = Math.max(...corners.map(([x = 0, , run = 0]) => x + run));
    expect([left, side - right]).toEqual([4, 4]);
  });
});

import fc from "fast-check";
import decodeQR from "qr/decode.js";
import { describe, expect, it } from "vitest";
import { codeOf, longestLink } from "../../../site/hand-over/code.js";

/** The path painted black on white, three pixels a module, as a camera would see it. */
function photograph(path: string, side: number) {
  const scale = 3;
  const width = side * scale;
  const data = new Uint8Array(width * width * 4).fill(255);
  for (const [, x, y, run] of path.matchAll(/M(\d+) (\d+)h(\d+)v1H\d+z/g)) {
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row += 1) {
      const start = (row * width + Number(x) * scale) * 4;
      for (let at = start; at < start + Number(run) * scale * 4; at += 4) data.fill(0, at, at + 3);
    }
  }
  return { width, height: width, data };
}

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

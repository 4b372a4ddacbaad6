import { demoCar, formatCar, parseCar } from "@rollbook/lib";
import fc from "fast-check";
import decodeQR from "qr/decode.js";
import { describe, expect, it } from "vitest";
import { codeOf } from "../../../site/hand-over/code.js";
import { LONGEST_CODE } from "../../../site/hand-over/entries-in-codes.js";
import {
  broughtIn,
  codeEndsOf,
  joined,
  linkEndOf,
  MOST_CODES,
  type Piece,
} from "../../../site/hand-over/file-links.js";
import { pack, unpack } from "../../../site/hand-over/packed.js";
import { hurt } from "../../fuzz.js";
import { photograph } from "./photograph.js";

const piecesOf = (letters: string, longest?: number): Piece[] =>
  codeEndsOf(letters, longest).flatMap((end) => {
    const read = broughtIn(end);
    return read !== undefined && "of" in read ? [read] : [];
  });

describe("a file in a link", () => {
  it("is the car that was handed on, in the whole link and in the codes, in any order", async () => {
    const letters = await pack(JSON.stringify(JSON.parse(formatCar(demoCar))));
    const whole = broughtIn(linkEndOf(letters));
    expect(whole).toEqual({ letters });
    const read = parseCar((await unpack(letters)) ?? "");
    expect(read.car).toEqual(demoCar);
    const ends = codeEndsOf(letters);
    expect(ends).toHaveLength(2); // 1 366 letters on the day this was written, at most 1 200 a code
    for (const end of ends) {
      const link = `https://club.example/rollbook/your-car.html${end}`;
      expect(end.length).toBeLessThan(LONGEST_CODE + 40);
      const { path, side } = codeOf(link);
      expect(decodeQR(photograph(path, side))).toBe(link);
    }
    expect(joined(piecesOf(letters).reverse())).toBe(letters);
  });

  it("comes together from all its pieces alone, however it was cut", () => {
    const letters = fc.stringMatching(/^[\w-]{20,400}$/);
    fc.assert(
      fc.property(letters, fc.integer({ min: 20, max: 120 }), fc.nat(), (whole, longest, gone) => {
        const pieces = piecesOf(whole, longest);
        if (pieces.length < 2) return;
        expect(joined(pieces)).toBe(whole);
        const left = pieces.filter((_, i) => i !== gone % pieces.length);
        expect(joined(left)).toBeUndefined();
        const [first, ...rest] = pieces as [Piece, ...Piece[]];
        const swapped = {
          ...first,
          letters: `${first.letters.slice(1)}${first.letters.slice(0, 1)}`,
        };
        if (swapped.letters !== first.letters) expect(joined([swapped, ...rest])).toBeUndefined();
      }),
    );
    expect(codeEndsOf("x".repeat(MOST_CODES * 100 + 1), 100)).toEqual([]);
  });

  it("is nothing where an address holds nothing of the kind", () => {
    const end = "#take?piece=abc.1.2.zAAAA";
    fc.assert(
      fc.property(fc.oneof(hurt(end), fc.string(), hurt("#take?file=zAA")), (text) => {
        const read = broughtIn(text);
        if (read === undefined || !("of" in read)) return;
        expect(read.number).toBeGreaterThanOrEqual(1);
        expect(read.number).toBeLessThanOrEqual(read.count);
        expect(read.count).toBeLessThanOrEqual(MOST_CODES);
      }),
    );
    expect(broughtIn("#take?piece=abc.3.2.zA")).toBeUndefined();
    expect(joined([])).toBeUndefined();
  });
});

import { expect, test } from "vitest";
import { readerWith } from "../../../site/say/reader.js";
import { tyreDoubtInWords } from "../../../site/say/tyre-doubt.js";

test("the sentence comes in the units of the reader", () => {
  const range = { minimum: 186e3, maximum: 255e3 }; // Pa
  const value = 270e3; // Pa
  const doubt = { end: "front", tyre: "published road", what: "pressure", value, range } as const;
  expect(tyreDoubtInWords(doubt, readerWith("metric")).replaceAll("\u00a0", " ")).toBe(
    "Front tyre pressure is 270 kPa but the data of the tyre “published road” reach from 186 kPa to 255 kPa: the tyre is taken as at 255 kPa, and changes out there show no effect.",
  );
  expect(tyreDoubtInWords(doubt, readerWith("us")).replaceAll("\u00a0", " ")).toContain(
    "the data of the tire “published road” reach from 27.0 psi to 37.0 psi", // by hand: ÷ 6894.757
  );
});

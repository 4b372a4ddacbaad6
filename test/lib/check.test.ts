import fc from "fast-check";
import { expect, test } from "vitest";
import { requireInRange } from "../../lib/check.js";

test("a number inside its range passes through unchanged", () => {
  fc.assert(
    fc.property(fc.double({ min: -5, max: 5, noNaN: true }), (value) => {
      expect(requireInRange("track", value, -5, 5)).toBe(value);
    }),
  );
});

test("a number outside its range is refused in one sentence with field, value and range", () => {
  expect(() => requireInRange("track", 9, 0.9, 2, "m")).toThrow(
    "track is 9 m but must be from 0.9 to 2 m.",
  );
});

test.each([NaN, Infinity, -Infinity])("%s is never in range", (value) => {
  expect(() => requireInRange("mass", value, -Infinity, Infinity)).toThrow(RangeError);
});

test("an open end of the range is said in words", () => {
  expect(() => requireInRange("mass", -1, 0, Infinity, "kg")).toThrow(
    "mass is -1 kg but must be at least 0 kg.",
  );
});

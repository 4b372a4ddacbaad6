import { expect, test } from "vitest";
import { riseFromJacking } from "../../../lib/linkage/jacking-rise.js";

test("133 N on two wheels of 25 N/mm lift the body by 2.67 mm, and pull it down with the sign", () => {
  expect(riseFromJacking(400 / 3, 25e3)).toBeCloseTo(400 / 3 / 50e3, 12); // by hand
  expect(riseFromJacking(-400 / 3, 25e3)).toBeCloseTo(-400 / 3 / 50e3, 12);
});

test("a wheel without spring is refused", () => {
  expect(() => riseFromJacking(100, 0)).toThrow(/wheel rate is 0 N\/m/);
});

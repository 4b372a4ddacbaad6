import { expect, test } from "vitest";
import { seatTurnsForHeight } from "../../../lib/spring/seat-turns.js";

test("ten millimetres down on a ratio of 0.65 and 1.5 mm a turn are 4⅓ turns down", () => {
  expect(seatTurnsForHeight(-0.01, 0.65, 1.5e-3)).toBeCloseTo(-13 / 3, 12); // by hand
});

test("a seat without thread is refused", () => {
  expect(() => seatTurnsForHeight(0.01, 0.65, 0)).toThrow(/seat travel per turn/);
});

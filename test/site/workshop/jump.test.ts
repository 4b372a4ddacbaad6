import { expect, it } from "vitest";
import { jumpBetween } from "../../../site/pages/workshop/run/jump.js";

const HOUR = 3600e3;
const look = (told: number, counted: number, away = false) => ({ told, counted, away });

it("a device's clock that is set while the page is in sight has jumped, forward or back", () => {
  expect(jumpBetween(look(0, 0), look(HOUR + 1000, 1000))).toBe(HOUR);
  expect(jumpBetween(look(HOUR, 0), look(1000, 1000))).toBe(-HOUR);
  expect(jumpBetween(look(HOUR, 0), look(1000, 1000, true))).toBe(-HOUR);
});

it("one that is kept right by a second has not, nor has one that told the time while the device slept", () => {
  expect(jumpBetween(look(0, 0), look(2000, 1000))).toBe(0);
  expect(jumpBetween(look(0, 0), look(HOUR, 20, true))).toBe(0);
});

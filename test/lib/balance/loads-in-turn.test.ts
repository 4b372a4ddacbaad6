import { expect, test } from "vitest";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { axlesAt, tipsOverAt } from "../../../lib/balance/loads-in-turn.js";
import { demoCar } from "../../../lib/car/demo-car.js";

const car = handlingCarOf(demoCar);
const most = tipsOverAt(car, { speed: 25 });

test("a car stands up to the turn at which it tips over, and no further", () => {
  expect(Object.values(axlesAt(car, { speed: 25 }, most).lifted)).toContain(true);
  expect(() => axlesAt(car, { speed: 25 }, most + 0.01)).toThrow(RangeError);
});

test("the sentence of a car that tips over gives no digits that mean nothing", () => {
  expect(() => axlesAt(car, { speed: 25 }, most + 1 / 3)).toThrow(
    /^lateral acceleration is \d+(\.\d{1,3})? m\/s² but the car tips over at \d+(\.\d{1,3})? m\/s²\.$/,
  );
});

import { expect, test } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { rigidCarOf } from "../../../lib/car/rigid-car.js";

test("as one block the demo car is 1080 kg, 495 mm up, on a track of 1445 mm", () => {
  const rigid = rigidCarOf(demoCar);
  expect(rigid.mass).toBe(1080);
  // by hand: (810·0.54 + 80·0.48 + 30·0.4 + 160·0.29) / 1080 = 534.2 / 1080
  expect(rigid.centreOfGravityHeight).toBeCloseTo(534.2 / 1080, 12);
  expect(rigid.track).toBeCloseTo(1.445, 12);
  expect(rigid.wheelbase).toBe(2.4);
});

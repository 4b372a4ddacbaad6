import { expect, test } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { loweredCar } from "../../../lib/car/lowered.js";
import { rigidCarOf } from "../../../lib/car/rigid-car.js";
import type { Car } from "../../../lib/index.js";

const height = (car: Car) => rigidCarOf(car).centreOfGravityHeight;

test("lowering the body 10 mm lowers the whole by less, since the wheels stay", () => {
  const drop = height(demoCar) - height(loweredCar(demoCar, 0.01));
  expect(drop).toBeCloseTo((0.01 * 920) / 1080, 12); // by hand: 920 of 1080 kg are on the springs
});

test("roll centre, camber, toe and travel follow the body as wheel travel moves them", () => {
  const { front } = loweredCar(demoCar, 0.01);
  expect(front.rideHeight).toBeCloseTo(0.12, 12);
  expect(front.geometry.rollCentreHeight).toBeCloseTo(0.05 - 1.2 * 0.01, 12); // by hand
  expect((front.camber.left * 180) / Math.PI).toBeCloseTo(-1.5 - 0.22, 12);
  expect((front.toe.right * 180) / Math.PI).toBeCloseTo(-0.03, 12);
  expect(front.geometry.bumpTravel).toBeCloseTo(0.05, 12);
  expect(front.geometry.droopTravel).toBeCloseTo(0.07, 12);
});

test("lowering and raising by the same amount gives the car back", () => {
  const back = loweredCar(loweredCar(demoCar, 0.012), -0.012);
  expect(height(back)).toBeCloseTo(height(demoCar), 12);
  expect(back.rear.camber.left).toBeCloseTo(demoCar.rear.camber.left, 12);
  expect(back.rear.geometry.rollCentreHeight).toBeCloseTo(0.09, 12);
});

test("a body below the ground is refused", () => {
  expect(() => loweredCar(demoCar, 0.2)).toThrow(/lowering is 0.2 m but must be from -1 to 0.13/);
});

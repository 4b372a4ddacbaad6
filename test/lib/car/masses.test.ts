import { expect, test } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import {
  axleWeightsOf,
  frontShareOf,
  sprungMassOf,
  together,
  totalMassOf,
} from "../../../lib/car/masses.js";

test("two masses as one lie where they balance", () => {
  const one = { mass: 1, behindFrontAxle: 0, leftOfCentre: 0, height: 1 };
  const three = { mass: 3, behindFrontAxle: 2, leftOfCentre: -1, height: 0 };
  // by hand
  expect(together([one, three])).toEqual({
    mass: 4,
    behindFrontAxle: 1.5,
    leftOfCentre: -0.75,
    height: 0.25,
  });
});

test("the demo car weighs 1080 kg with driver and fuel, 52 % of it in front", () => {
  const total = totalMassOf(demoCar);
  expect(total.mass).toBe(810 + 80 + 30 + 75 + 85);
  // by hand: (810·1.07 + 80·1.35 + 30·2.2 + 85·2.4) / 1080 = 1.1525 m behind the front axle
  expect(total.behindFrontAxle).toBeCloseTo(1.1525, 12);
  expect(frontShareOf(total, demoCar.wheelbase)).toBeCloseTo(0.519792, 6);
});

test("the axle weights are the weight", () => {
  const { front, rear } = axleWeightsOf(demoCar);
  expect(front + rear).toBeCloseTo(1080 * 9.80665, 9);
});

test("a car without driver and fuel is its body", () => {
  const { driver, fuel, ...empty } = demoCar;
  expect(driver && fuel).toBeDefined();
  const { body } = demoCar;
  expect(sprungMassOf(empty).mass).toBe(body.mass);
  expect(sprungMassOf(empty).height).toBeCloseTo(body.height, 12);
});

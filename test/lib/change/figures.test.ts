import { expect, test } from "vitest";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { figuresOf } from "../../../lib/change/figures.js";
import { smallStep } from "../../../lib/transient/small-step.js";
import { demoInRoll } from "../load/demo-in-roll.js";
import { rollByEnergy } from "../load/roll-by-energy.js";

const figures = figuresOf(standingCar(demoCar));

test("at rest the demo car stands as its file says", () => {
  expect(figures.rideHeight.front).toBeCloseTo(0.13, 12);
  expect(figures.rideHeight.rear).toBeCloseTo(0.14, 12);
  expect(figures.camber.front).toBeCloseTo((-1.5 * Math.PI) / 180, 12);
  expect(figures.toe.rear).toBeCloseTo((0.1 * Math.PI) / 180, 12);
  expect(figures.bumpTravel.front).toBeCloseTo(0.06, 12);
  expect(figures.frontWeightShare).toBeCloseTo(1 - 1.1525 / 2.4, 9);
});

test("its front end bounces at 1.537 Hz", () => {
  // by hand: 25 350 and 215 000 N/m in series under half of 561.375 − 75 kg
  const ride = (25350 * 215e3) / (25350 + 215e3);
  const mass = (1080 * (1 - 1.1525 / 2.4) - 75) / 2;
  expect(figures.rideFrequency.front).toBeCloseTo(Math.sqrt(ride / mass) / (2 * Math.PI), 6);
});

test("one front wheel over a kerb meets its spring and half the bar", () => {
  expect(figures.oneWheelRate.front).toBeCloseTo(25350 + 22e3 * 0.6 ** 2, 6); // by hand: k·i²
});

test("it rolls to where the energy of springs, tyres, weights and side force is least", () => {
  expect(figures.rollGradient).toBeCloseTo(rollByEnergy(demoInRoll).body, 9);
});

test("the body in roll is quicker than in bounce and damped short of no overshoot", () => {
  // common practice, no source
  expect(figures.rollFrequency).toBeGreaterThan(1.5);
  expect(figures.rollFrequency).toBeLessThan(3);
  expect(figures.rollDampingRatio).toBeGreaterThan(0.2);
  expect(figures.rollDampingRatio).toBeLessThan(1);
});

test("it understeers a little and answers the steering as a light car does", () => {
  // common practice, no source: 0.5 to 3 °/g, and yaw at 90 % after 0.1 to 0.3 s
  const perG = (figures.understeerGradient * 180 * 9.80665) / Math.PI;
  expect(perG).toBeGreaterThan(0.5);
  expect(perG).toBeLessThan(3);
  expect(figures.yawResponseTime).toBeGreaterThan(0.1);
  expect(figures.yawResponseTime).toBeLessThan(0.3);
});

test("gradient and response are those at the speed asked for", () => {
  const fast = figuresOf(standingCar(demoCar), 40);
  expect(smallStep(handlingCarOf(demoCar), 40)).toMatchObject({
    understeerGradient: fast.understeerGradient,
    yawResponseTime: fast.yawResponseTime,
  });
  // an understeering car answers sooner and swings more as it goes faster – Abe, ch. 3
  expect(fast.yawResponseTime).toBeLessThan(figures.yawResponseTime);
});

import fc from "fast-check";
import { expect, test } from "vitest";
import { carBalance } from "../../../lib/balance/car-balance.js";
import type { HandlingAxle, HandlingCar } from "../../../lib/balance/handling-car.js";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { mirrorCar } from "../../../lib/balance/mirror-car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { between } from "../evenly.js";
import { anyCar, lightCar } from "./cars.js";

const driving = { speed: 25 };
const still = { ...lightCar, dragFactor: 0 };

/** The car with its ends exchanged; only for steady turns, where driving forward does not matter. */
function reversed(car: HandlingCar): HandlingCar {
  return {
    ...car,
    sprungFrontShare: 1 - car.sprungFrontShare,
    front: car.rear,
    rear: car.front,
    dragFactor: 0,
  };
}

function stiffer(axle: HandlingAxle, by: number): HandlingAxle {
  return { ...axle, rollStiffness: axle.rollStiffness * by };
}

test("exchanging the ends of a car turns understeer into as much oversteer", () => {
  fc.assert(
    fc.property(anyCar, (any) => {
      const car = { ...any, dragFactor: 0 };
      const margin = carBalance(car, driving).understeerMargin;
      expect(carBalance(reversed(car), driving).understeerMargin).toBeCloseTo(-margin, 4);
    }),
  );
});

test("a car with equal sides turns left as it turns right", () => {
  fc.assert(
    fc.property(anyCar, (any) => {
      const even = (axle: HandlingAxle) => ({
        ...axle,
        leftExcessLoad: 0,
        pressure: { left: axle.pressure.left, right: axle.pressure.left },
        camber: { left: axle.camber.left, right: axle.camber.left },
        toe: { left: axle.toe.left, right: axle.toe.left },
      });
      const car = { ...any, front: even(any.front), rear: even(any.rear) };
      expect(carBalance(mirrorCar(car), driving)).toEqual(carBalance(car, driving));
    }),
  );
});

test("two mirrors give the car back", () => {
  fc.assert(
    fc.property(anyCar, (car) => {
      expect(mirrorCar(mirrorCar(car))).toEqual(car);
    }),
  );
});

test("a stiffer front takes grip from the front and gives it to the rear", () => {
  const before = carBalance(still, driving);
  const after = carBalance({ ...still, front: stiffer(still.front, 1.3) }, driving);
  expect(after.front.lateralAcceleration).toBeLessThan(before.front.lateralAcceleration);
  expect(after.rear.lateralAcceleration).toBeGreaterThan(before.rear.lateralAcceleration);
  expect(after.understeerMargin).toBeGreaterThan(before.understeerMargin);
});

test("an axle that has lifted its inner wheel gains nothing from more stiffness", () => {
  const tall = { ...still, sprungHeight: 0.6 };
  const lifting = { ...tall, rear: stiffer(tall.rear, 6) };
  const more = { ...tall, rear: stiffer(tall.rear, 8) };
  const [a, b] = [carBalance(lifting, driving), carBalance(more, driving)];
  expect(a.lifted).toEqual({ front: false, rear: true });
  expect(b.rear.lateralAcceleration).toBeCloseTo(a.rear.lateralAcceleration, 1);
});

test("a tall narrow car tips over before its tyres let go", () => {
  const axle = (one: HandlingAxle) => ({ ...one, track: 1.1, rollCentreHeight: 0.3 });
  const tall = { ...still, sprungHeight: 0.9, front: axle(still.front), rear: axle(still.rear) };
  const { tips, lateralAcceleration } = carBalance(tall, driving);
  expect(tips).toBe(true);
  // NHTSA static stability factor: T/(2h)·g; the centre of gravity lies at 0.80 m
  expect(lateralAcceleration).toBeLessThan((1.1 / (2 * 0.8)) * 9.81);
});

test("braking to the limit takes side force from the axle that brakes too much", () => {
  const brake = { speed: 25, longitudinalAcceleration: -6 };
  const forward = carBalance({ ...still, brakeFrontShare: 0.75 }, brake);
  const rearward = carBalance({ ...still, brakeFrontShare: 0.55 }, brake);
  expect(rearward.rear.lateralAcceleration).toBeLessThan(forward.rear.lateralAcceleration);
  expect(rearward.front.lateralAcceleration).toBeGreaterThan(forward.front.lateralAcceleration);
});

test("the driven axle pays for the push", () => {
  const push = { speed: 20, longitudinalAcceleration: 3 };
  const rearDriven = carBalance({ ...still, driveFrontShare: 0 }, push);
  const frontDriven = carBalance({ ...still, driveFrontShare: 1 }, push);
  expect(frontDriven.front.lateralAcceleration).toBeLessThan(rearDriven.front.lateralAcceleration);
  expect(rearDriven.rear.lateralAcceleration).toBeLessThan(frontDriven.rear.lateralAcceleration);
});

test("downforce adds grip with the square of speed", () => {
  const winged = (one: HandlingAxle) => ({ ...one, downforceFactor: 0.5 });
  const car = { ...still, front: winged(still.front), rear: winged(still.rear) };
  const slow = carBalance(car, { speed: 15 }).lateralAcceleration;
  const fast = carBalance(car, { speed: 45 }).lateralAcceleration;
  expect(fast).toBeGreaterThan(slow + 1);
});

test("a stiff front damper moves load to the front tyre pair while the body rolls in", () => {
  const damped = { ...still, front: { ...still.front, rollDamping: 6000 } };
  const turnIn = { speed: 25, lateralJerk: 15 };
  const steady = carBalance(damped, driving);
  const rolling = carBalance(damped, turnIn);
  expect(rolling.front.lateralAcceleration).toBeLessThan(steady.front.lateralAcceleration);
  expect(rolling.rear.lateralAcceleration).toBeGreaterThan(steady.rear.lateralAcceleration);
});

test("any car in any phase gives finite numbers", () => {
  const ax = between(-12, 8);
  const jerk = between(-40, 40);
  fc.assert(
    fc.property(anyCar, ax, jerk, (car, longitudinalAcceleration, lateralJerk) => {
      const balance = carBalance(car, { speed: 25, longitudinalAcceleration, lateralJerk });
      expect(balance.lateralAcceleration).toBeGreaterThanOrEqual(0);
      expect(Number.isFinite(balance.understeerMargin)).toBe(true);
    }),
    { numRuns: 60 },
  );
});

test("a car that cannot stand is refused", () => {
  const soft = (one: HandlingAxle) => ({ ...one, rollStiffness: 100 });
  const car = { ...still, front: soft(still.front), rear: soft(still.rear) };
  expect(() => carBalance(car, driving)).toThrow(RangeError);
});

test("the demo car understeers a little, and a stiffer front bar makes it more", () => {
  const margin = (position: number) => {
    const { bar } = demoCar.front;
    const front =
      bar === undefined ? demoCar.front : { ...demoCar.front, bar: { ...bar, position } };
    return carBalance(handlingCarOf({ ...demoCar, front }), driving).understeerMargin;
  };
  expect(margin(3)).toBeGreaterThan(0);
  expect(margin(5)).toBeGreaterThan(margin(3));
  expect(margin(1)).toBeLessThan(margin(3));
});

import fc from "fast-check";
import { expect, test } from "vitest";
import { axleMasses, type HandlingAxle } from "../../../lib/balance/handling-car.js";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { criticalSpeed, understeerGradient } from "../../../lib/balance/linear-understeer.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { eachAxle } from "../../../lib/load/wheels.js";
import { smallStep } from "../../../lib/transient/small-step.js";
import { stepSteer } from "../../../lib/transient/step-steer.js";
import { corneringStiffness61 } from "../../../lib/tyre/magic-formula-61-side.js";
import { anyCar, lightCar } from "../balance/cars.js";
import { understeerGradientAt } from "../balance/understeer-gradient-at.js";
import { withoutTrail } from "../balance/without-trail.js";
import { between } from "../evenly.js";

const gravity = 9.80665;

/** Upright wheels without toe on a low car that hardly rolls: what two tyres on a stick are. */
const upright = (axle: HandlingAxle): HandlingAxle => ({
  ...withoutTrail(axle),
  camber: { left: 0, right: 0 },
  independent: false,
  camberGain: 0,
  toeGain: 0,
});

const bicycle = {
  ...lightCar,
  sprungHeight: 0.1,
  front: upright(lightCar.front),
  rear: upright(lightCar.rear),
};

function gradientByHand(car: typeof bicycle): number {
  const axles = eachAxle(axleMasses(car), (mass, end) => ({
    load: mass * gravity,
    corneringStiffness: 2 * corneringStiffness61(car[end].tyre, (mass * gravity) / 2, 200e3, 0),
  }));
  return understeerGradient(axles);
}

test("the steady yaw rate is V/(L + K·V²) for each rad of steer", () => {
  // Wong, Theory of Ground Vehicles, ch. 5 (from memory)
  const gradient = gradientByHand(bicycle);
  for (const speed of [5, 15, 25, 40]) {
    const step = smallStep(bicycle, speed);
    expect(step.yawGain * (2.4 / speed + gradient * speed)).toBeCloseTo(1, 2);
    expect(Math.abs(step.understeerGradient - gradient)).toBeLessThan(2e-5);
  }
});

test.each([
  ["light car", { ...lightCar, dragFactor: 0 }],
  ["demo car", handlingCarOf(demoCar)],
])("the understeer gradient of a %s is that of gentle turns on its four wheels", (_, car) => {
  for (const speed of [15, 40]) {
    const gentle = understeerGradientAt(car, { speed }) ?? Number.NaN;
    expect(Math.abs(smallStep(car, speed).understeerGradient - gentle)).toBeLessThan(6e-5); // 0.03 °/g
  }
});

test.each([
  ["light car", lightCar],
  ["demo car", handlingCarOf(demoCar)],
])("a %s answers in the time of a real step into a gentle turn", (_, car) => {
  for (const speed of [10, 20, 30, 40]) {
    const real = stepSteer(car, { speed, lateralAcceleration: 0.5 }).yawRate.responseTime;
    expect(Math.abs(smallStep(car, speed).yawResponseTime - real)).toBeLessThan(2e-3);
  }
});

test("from the critical speed on a car never settles: there is no response time", () => {
  const car = { ...bicycle, sprungFrontShare: 0.35 };
  const critical = criticalSpeed(gradientByHand(car), car.wheelbase);
  expect(critical).toBeLessThan(100);
  expect(smallStep(car, critical * 1.05)).toMatchObject({ yawResponseTime: Infinity });
  expect(smallStep(car, critical * 1.05).yawGain).toBeLessThan(0);
  expect(smallStep(car, critical * 0.8).yawResponseTime).toBeLessThan(10);
});

test("tyres that carry nothing answer nothing", () => {
  const flying = (axle: HandlingAxle) => ({ ...axle, downforceFactor: -100 });
  const car = { ...lightCar, front: flying(lightCar.front), rear: flying(lightCar.rear) };
  expect(smallStep(car, 50)).toEqual({
    yawGain: 0,
    understeerGradient: Infinity,
    yawResponseTime: Infinity,
  });
});

test("any car answers without NaN, in no less than no time", () => {
  fc.assert(
    fc.property(anyCar, between(0.5, 200), (car, speed) => {
      const { yawGain, understeerGradient, yawResponseTime } = smallStep(car, speed);
      expect(understeerGradient).not.toBeNaN();
      expect(yawGain).toSatisfy(Number.isFinite);
      expect(yawResponseTime).toBeGreaterThanOrEqual(0);
    }),
  );
});

test("a speed out of range is refused", () => {
  expect(() => smallStep(lightCar, 0)).toThrow("speed is 0 m/s but must be from 0.5 to 200 m/s.");
});

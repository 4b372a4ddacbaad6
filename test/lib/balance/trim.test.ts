import fc from "fast-check";
import { expect, test } from "vitest";
import { carBalance } from "../../../lib/balance/car-balance.js";
import {
  axleDistances,
  carMass,
  centreOfGravityHeight,
  type HandlingAxle,
  type HandlingCar,
} from "../../../lib/balance/handling-car.js";
import { handlingCurve, understeerGradientAt } from "../../../lib/balance/handling-curve.js";
import { understeerGradient } from "../../../lib/balance/linear-understeer.js";
import { mirrorCar } from "../../../lib/balance/mirror-car.js";
import { type Trim, trim } from "../../../lib/balance/trim.js";
import { yawMomentOf } from "../../../lib/balance/yaw-moment.js";
import { corneringStiffness61 } from "../../../lib/tyre/magic-formula-61-side.js";
import { between } from "../evenly.js";
import { anyCar, lightCar } from "./cars.js";

const gravity = 9.80665;
const ax = between(-2.5, 1.5);
const ay = between(-6, 6);

/** A trim, or nothing also where the car tips over. */
function trimUnlessTipping(...[car, driving, lateral]: Parameters<typeof trim>): Trim | undefined {
  try {
    return trim(car, driving, lateral);
  } catch (error) {
    expect((error as Error).message).toContain("tips over");
    return undefined;
  }
}

/** Forces and yaw moment on the car, summed here from what each wheel does in its place. */
function sums(car: HandlingCar, state: Trim, speed: number) {
  const at = axleDistances(car);
  const total = { forward: 0, left: 0, moment: 0, load: 0, overturning: 0 };
  for (const end of ["front", "rear"] as const)
    for (const side of ["left", "right"] as const) {
      const wheel = state.wheels[end][side];
      const x = end === "front" ? at.front : -at.rear;
      const y = ((side === "left" ? 1 : -1) * car[end].track) / 2;
      const forwards = speed * Math.cos(state.sideSlip) - state.yawRate * y;
      const sideways = speed * Math.sin(state.sideSlip) + state.yawRate * x;
      const angle = wheel.slipAngle + Math.atan2(sideways, forwards);
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const forward = wheel.longitudinalForce * c - wheel.sideForce * s;
      const left = wheel.longitudinalForce * s + wheel.sideForce * c;
      total.forward += forward;
      total.left += left;
      total.moment += x * left - y * forward;
      total.load += wheel.load;
      total.overturning -= wheel.load * y;
    }
  return total;
}

test("in trim forces, yaw moment, loads and overturning moment balance", () => {
  fc.assert(
    fc.property(anyCar, ax, ay, (car, longitudinalAcceleration, lateralAcceleration) => {
      const speed = 22;
      const state = trimUnlessTipping(
        car,
        { speed, longitudinalAcceleration },
        lateralAcceleration,
      );
      if (state === undefined) return;
      const mass = carMass(car);
      const weight = mass * gravity;
      const { forward, left, moment, load, overturning } = sums(car, state, speed);
      const drag = car.dragFactor * speed ** 2;
      const downforce = (car.front.downforceFactor + car.rear.downforceFactor) * speed ** 2;
      expect((forward - mass * longitudinalAcceleration - drag) / weight).toBeCloseTo(0, 9);
      expect((left - mass * lateralAcceleration) / weight).toBeCloseTo(0, 9);
      expect(moment / (weight * car.wheelbase)).toBeCloseTo(0, 9);
      if (
        Math.max(
          ...[state.wheels.front, state.wheels.rear].flatMap((w) => [w.left.load, w.right.load]),
        ) >= 9e3
      )
        return;
      expect((load - weight - downforce) / weight).toBeCloseTo(0, 9);
      // m·ay·h + ms·g·d·φ for each end, and what uneven scales add
      const lean = (end: "front" | "rear", share: number) =>
        car.sprungMass *
        share *
        gravity *
        (car.sprungHeight - car[end].rollCentreHeight) *
        state.rollAngle[end];
      const uneven =
        car.front.leftExcessLoad * car.front.track + car.rear.leftExcessLoad * car.rear.track;
      const expected =
        mass * lateralAcceleration * centreOfGravityHeight(car) +
        lean("front", car.sprungFrontShare) +
        lean("rear", 1 - car.sprungFrontShare) -
        uneven;
      expect((overturning - expected) / (weight * car.front.track)).toBeCloseTo(0, 9);
    }),
    { numRuns: 200 },
  );
});

test("brakes and drive share their force between the axles as they are built", () => {
  fc.assert(
    fc.property(anyCar, between(-2.5, -0.8), (car, braking) => {
      const state = trimUnlessTipping(car, { speed: 22, longitudinalAcceleration: braking }, 2);
      if (state === undefined) return;
      const { front, rear } = state.push;
      expect(front / (front + rear)).toBeCloseTo(car.brakeFrontShare, 9);
    }),
    { numRuns: 50 },
  );
});

test("a right turn of a car is the left turn of its mirror image", () => {
  fc.assert(
    fc.property(anyCar, ay, between(-20, 20), (car, lateralAcceleration, lateralJerk) => {
      const turning = (jerk: number) => ({ speed: 22, lateralJerk: jerk });
      const right = trimUnlessTipping(car, turning(-lateralJerk), -lateralAcceleration);
      const left = trimUnlessTipping(mirrorCar(car), turning(lateralJerk), lateralAcceleration);
      expect(right?.steer ?? 0).toBeCloseTo(-(left?.steer ?? 0), 9);
      expect(right?.yawRate ?? 0).toBeCloseTo(-(left?.yawRate ?? 0), 9);
    }),
    { numRuns: 50 },
  );
});

test("a car that comes out of a right turn moves the load of its dampers to the left", () => {
  // lateral acceleration grows to the left: the body rolls right side down, and a damper that is
  // in front alone presses the right front tyre, whichever way the car still turns
  const car = {
    ...lightCar,
    front: { ...lightCar.front, rollDamping: 6000 },
    rear: { ...lightCar.rear, rollDamping: 0 },
  };
  for (const lateralAcceleration of [-5, 0, 5]) {
    const load = (lateralJerk: number) =>
      trim(car, { speed: 22, lateralJerk }, lateralAcceleration)?.wheels.front.right.load ?? NaN;
    expect(load(12)).toBeGreaterThan(load(0) + 50);
    expect(load(-12)).toBeLessThan(load(0) - 50);
  }
});

test("a warm start ends where a cold one does", () => {
  const driving = { speed: 20, longitudinalAcceleration: 1 };
  const near = trim(lightCar, driving, 5);
  const warm = trim(lightCar, driving, 6, near);
  expect(warm?.steer).toBeCloseTo(trim(lightCar, driving, 6)?.steer ?? NaN, 9);
});

test("beyond the grip of the tyres there is no trim, and near the limit of the axles it ends", () => {
  for (const longitudinalAcceleration of [-3, 0, 2]) {
    const driving = { speed: 20, longitudinalAcceleration };
    const limit = carBalance(lightCar, driving).lateralAcceleration;
    expect(trim(lightCar, driving, limit * 0.93)).toBeDefined();
    expect(trim(lightCar, driving, limit * 1.05)).toBeUndefined();
  }
});

test("steering at small turns follows the understeer gradient of the two axles", () => {
  // K = Wf/Cf − Wr/Cr over g – Wong, Theory of Ground Vehicles, ch. 5; upright wheels, no roll steer
  const upright = (axle: HandlingAxle): HandlingAxle => ({
    ...axle,
    camber: { left: 0, right: 0 },
    camberGain: -2 / axle.track / axle.suspensionRollShare,
  });
  const car = {
    ...lightCar,
    dragFactor: 0,
    front: upright(lightCar.front),
    rear: upright(lightCar.rear),
  };
  const axle = (mass: number) => ({
    load: mass * gravity,
    corneringStiffness:
      2 * corneringStiffness61(lightCar.front.tyre, (mass * gravity) / 2, 200e3, 0),
  });
  const front = lightCar.sprungMass * lightCar.sprungFrontShare + 80;
  const rear = carMass(lightCar) - front;
  const expected = understeerGradient({ front: axle(front), rear: axle(rear) });
  const fast = { speed: 60 }; // so that the corner itself asks for hardly any steering
  expect(understeerGradientAt(car, fast)).toBeCloseTo(expected, 5);
});

test("the handling curve starts straight and bends to more steering for an understeering car", () => {
  const car = { ...lightCar, front: { ...lightCar.front, rollStiffness: 60e3 } };
  const curve = handlingCurve(car, { speed: 20 });
  const angles = curve.map((point) => point.understeerAngle);
  expect(angles[0]).toBeCloseTo(0, 6);
  expect(angles.length).toBeGreaterThan(35);
  const last = angles.length - 1;
  const slope = (i: number) => (angles[i] ?? 0) - (angles[i - 1] ?? 0);
  expect(slope(last)).toBeGreaterThan(2 * slope(5));
});

test("held in its trim a car makes no yaw moment; with more steer it turns in", () => {
  const driving = { speed: 20 };
  const state = trim(lightCar, driving, 6);
  if (state === undefined) throw new Error("6 m/s² is well inside the grip of this car");
  const held = yawMomentOf(lightCar, driving, state);
  expect(held.lateralAcceleration).toBeCloseTo(6, 7);
  expect(held.yawMoment).toBeCloseTo(0, 4);
  const more = yawMomentOf(lightCar, driving, { ...state, steer: state.steer + 0.01 });
  expect(more.yawMoment).toBeGreaterThan(300);
});

test("the held car turned over makes the opposite moment", () => {
  const angle = between(-0.2, 0.2);
  fc.assert(
    fc.property(angle, angle, (sideSlip, steer) => {
      const turning = (lateralJerk: number) => ({ speed: 20, lateralJerk });
      const held = yawMomentOf(lightCar, turning(12), { sideSlip, steer });
      const over = yawMomentOf(lightCar, turning(-12), { sideSlip: -sideSlip, steer: -steer });
      expect(over.lateralAcceleration).toBeCloseTo(-held.lateralAcceleration, 6);
      expect(over.yawMoment).toBeCloseTo(-held.yawMoment, 3);
    }),
    { numRuns: 30 },
  );
});

test("nonsense is refused in a sentence", () => {
  expect(() => trim(lightCar, { speed: 0 }, 5)).toThrow("speed is 0 m/s");
  expect(() => trim(lightCar, { speed: 20 }, NaN)).toThrow(RangeError);
  expect(() => yawMomentOf(lightCar, { speed: 20 }, { sideSlip: 1, steer: 0 })).toThrow(RangeError);
});

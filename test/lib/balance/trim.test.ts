import fc from "fast-check";
import { expect, test } from "vitest";
import { carBalance } from "../../../lib/balance/car-balance.js";
import {
  axleDistances,
  carMass,
  type HandlingAxle,
  type HandlingCar,
} from "../../../lib/balance/handling-car.js";
import { understeerGradient } from "../../../lib/balance/linear-understeer.js";
import { mirrorCar } from "../../../lib/balance/mirror-car.js";
import { trim } from "../../../lib/balance/trim.js";
import type { Trim } from "../../../lib/balance/trimmed-car.js";
import { corneringStiffness61 } from "../../../lib/tyre/magic-formula-61-side.js";
import { between } from "../evenly.js";
import { anyCar, lightCar, momentlessTyre, someCars } from "./cars.js";
import { understeerAngle, understeerGradientAt } from "./understeer-gradient-at.js";

const gravity = 9.80665;
const ax = between(-2.5, 1.5);
const ay = between(-6, 6);

/** Forces and yaw moment on the car, summed here from what each wheel does in its place. */
function sums(car: HandlingCar, state: Trim, speed: number) {
  const at = axleDistances(car);
  const total = { forward: 0, left: 0, moment: 0, load: 0 };
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
      total.moment += x * left - y * forward + wheel.aligningMoment;
      total.load += wheel.load;
    }
  const [c, s] = [Math.cos(state.sideSlip), Math.sin(state.sideSlip)];
  return {
    ...total,
    along: total.forward * c + total.left * s,
    across: total.left * c - total.forward * s,
  };
}

test("in trim forces along and across the path, yaw moments and loads balance", () => {
  let found = 0;
  fc.assert(
    fc.property(anyCar, ax, ay, (car, longitudinalAcceleration, lateralAcceleration) => {
      const speed = 22;
      const state = trim(car, { speed, longitudinalAcceleration }, lateralAcceleration);
      if (state === undefined) return;
      found++;
      const mass = carMass(car);
      const weight = mass * gravity;
      const { along, across, moment, load } = sums(car, state, speed);
      const drag = car.dragFactor * speed ** 2;
      const downforce = (car.front.downforceFactor + car.rear.downforceFactor) * speed ** 2;
      expect((along - mass * longitudinalAcceleration - drag) / weight).toBeCloseTo(0, 7);
      expect((across - mass * lateralAcceleration) / weight).toBeCloseTo(0, 7);
      expect(moment / (weight * car.wheelbase)).toBeCloseTo(0, 7);
      expect((load - weight - downforce) / weight).toBeCloseTo(0, 9);
      expect(state.yawRate * speed).toBeCloseTo(lateralAcceleration, 9);
    }),
    { numRuns: 150 },
  );
  expect(found).toBeGreaterThan(120);
});

test("brakes share their force between the axles as they are built, while no wheel is near its most", () => {
  fc.assert(
    fc.property(anyCar, between(-2.5, -0.8), (car, braking) => {
      const state = trim(car, { speed: 22, longitudinalAcceleration: braking }, 1);
      if (state === undefined || state.push > 0) return;
      const { front, rear } = state.wheels;
      const of = ({ left, right }: typeof front) =>
        left.longitudinalForce + right.longitudinalForce;
      expect(of(front) / (of(front) + of(rear))).toBeCloseTo(car.brakeFrontShare, 2);
    }),
    { numRuns: 40 },
  );
});

test("a right turn of a car is the left turn of its mirror image", () => {
  fc.assert(
    fc.property(anyCar, ay, between(-20, 20), (car, lateralAcceleration, lateralJerk) => {
      const turning = (jerk: number) => ({ speed: 22, lateralJerk: jerk });
      const right = trim(car, turning(-lateralJerk), -lateralAcceleration);
      const left = trim(mirrorCar(car), turning(lateralJerk), lateralAcceleration);
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

test("trims reach the hardest turn and not beyond it", () => {
  for (const car of [lightCar, ...someCars(3, 15)])
    for (const longitudinalAcceleration of [-3, 0, 2]) {
      const driving = { speed: 22, longitudinalAcceleration };
      const { lateralAcceleration } = carBalance(car, driving);
      expect(trim(car, driving, lateralAcceleration * 0.995)).toBeDefined();
      expect(trim(car, driving, lateralAcceleration * 1.005)).toBeUndefined();
    }
});

test("round a corner the speed follows from the turn", () => {
  const round = trim(lightCar, { cornerRadius: 60 }, 6);
  expect(round?.speed).toBeCloseTo(Math.sqrt(360), 9); // V² = ay·R, by hand
  expect(round?.steer).toBeCloseTo(trim(lightCar, { speed: Math.sqrt(360) }, 6)?.steer ?? NaN, 9);
});

test("steering at small turns follows the understeer gradient of the two axles", () => {
  // K = Wf/Cf − Wr/Cr over g – Wong, Theory of Ground Vehicles, ch. 5; upright wheels, no roll steer
  const upright = (axle: HandlingAxle): HandlingAxle => ({
    ...axle,
    camber: { left: 0, right: 0 },
    camberGain: -2 / axle.track,
    tyreRollStiffness: Infinity,
    complianceSteer: 0,
    tyre: momentlessTyre,
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

test("compliance adds its part to the understeer gradient, the aligning moment some more", () => {
  // by hand: both ends give way by C·m·ay, so K grows by C·(m in front − m behind)
  const gradient = (change: (axle: HandlingAxle) => HandlingAxle, rear = change) =>
    understeerGradientAt(
      { ...lightCar, front: change(lightCar.front), rear: rear(lightCar.rear) },
      { speed: 60 },
    ) ?? NaN;
  const stiff = (axle: HandlingAxle) => ({ ...axle, complianceSteer: 0, tyre: momentlessTyre });
  const soft = (axle: HandlingAxle) => ({ ...stiff(axle), complianceSteer: 2e-6 });
  const front = lightCar.sprungMass * lightCar.sprungFrontShare + lightCar.front.unsprungMass;
  expect((gradient(soft, stiff) - gradient(stiff)) / (2e-6 * front)).toBeCloseTo(1, 1);
  const aligned = (axle: HandlingAxle) => ({ ...axle, complianceSteer: 0 });
  expect(gradient(aligned)).toBeGreaterThan(gradient(stiff) + 1e-4);
});

test("an understeering car starts straight and needs ever more steering towards its limit", () => {
  const car = { ...lightCar, front: { ...lightCar.front, rollStiffness: 60e3 } };
  const limit = carBalance(car, { speed: 20 }).lateralAcceleration;
  const angleAt = (share: number) => {
    const state = trim(car, { speed: 20 }, limit * share);
    return state === undefined ? Number.NaN : understeerAngle(state, car);
  };
  expect(angleAt(0)).toBeCloseTo(0, 6);
  expect(angleAt(0.975) - angleAt(0.95)).toBeGreaterThan(2 * (angleAt(0.125) - angleAt(0.1)));
});

test("nonsense is refused in a sentence", () => {
  expect(() => trim(lightCar, { speed: 0 }, 5)).toThrow("speed is 0 m/s");
  expect(() => trim(lightCar, { speed: 20 }, NaN)).toThrow(RangeError);
});

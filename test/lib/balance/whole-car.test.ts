import fc from "fast-check";
import { expect, test } from "vitest";
import type { Driving } from "../../../lib/balance/driving.js";
import {
  axleDistances,
  carMass,
  type HandlingAxle,
  type HandlingCar,
} from "../../../lib/balance/handling-car.js";
import { trim } from "../../../lib/balance/trim.js";
import {
  type Held,
  type WheelForces,
  type WholeCar,
  wholeCar,
} from "../../../lib/balance/whole-car.js";
import { combinedForce61 } from "../../../lib/tyre/magic-formula-61-combined.js";
import { aligningMoment61 } from "../../../lib/tyre/magic-formula-61-moment.js";
import { between } from "../evenly.js";
import { anyCar, lightCar, neutralCar } from "./cars.js";

const gravity = 9.80665;
const sides = ["left", "right"] as const;
const anyHeld: fc.Arbitrary<Held> = fc.record({
  front: between(-0.1, 0.25),
  rear: between(-0.1, 0.25),
  push: between(-6, 4),
  lateralAcceleration: between(0.2, 11),
});
const anyDriving: fc.Arbitrary<Driving> = fc.record({
  speed: between(12, 45),
  longitudinalAcceleration: between(-5, 3),
  grade: between(-0.1, 0.1),
  bank: between(-0.1, 0.2),
});

/** What one wheel does, by the published formulas of its tyre at what it stands on. */
function tyreOf({ tyre, pressure }: HandlingAxle, side: "left" | "right", wheel: WheelForces) {
  const { load, inclination } = wheel.stance;
  const { valid } = tyre;
  const within = (value: number, { minimum, maximum }: { minimum: number; maximum: number }) =>
    Math.min(maximum, Math.max(minimum, value));
  if (load < 1e-3) return { longitudinal: 0, side: 0, moment: 0 };
  const at = [
    wheel.slip,
    wheel.slipAngle,
    within(load, valid.load),
    within(pressure[side], valid.pressure),
    within(inclination, valid.inclination),
  ] as const;
  return { ...combinedForce61(tyre, ...at), moment: aligningMoment61(tyre, ...at) };
}

/** Forces along and across the path and the moment of all wheels, summed here: Σ F and Σ r × F. */
function sums(car: HandlingCar, whole: WholeCar, curvature: number) {
  const at = axleDistances(car);
  const { steer, sideSlip } = whole;
  const total = { along: 0, across: 0, moment: 0 };
  for (const end of ["front", "rear"] as const)
    for (const side of sides) {
      const wheel = whole.wheels[end][side];
      const x = end === "front" ? at.front : -at.rear;
      const y = ((side === "left" ? 1 : -1) * car[end].track) / 2;
      const points = wheel.stance.points + (end === "front" ? steer : 0);
      const goes = Math.atan2(
        Math.sin(sideSlip) + curvature * x,
        Math.cos(sideSlip) - curvature * y,
      );
      expect(wheel.slipAngle).toBeCloseTo(points - goes, 9);
      const force = tyreOf(car[end], side, wheel);
      const forward = force.longitudinal * Math.cos(points) - force.side * Math.sin(points);
      const left = force.longitudinal * Math.sin(points) + force.side * Math.cos(points);
      total.along += forward * Math.cos(sideSlip) + left * Math.sin(sideSlip);
      total.across += left * Math.cos(sideSlip) - forward * Math.sin(sideSlip);
      total.moment += x * left - y * forward + force.moment;
    }
  return total;
}

test("what is left over is what the wheels' own forces and moments leave of mass times acceleration", () => {
  fc.assert(
    fc.property(anyCar, anyDriving, anyHeld, (car, driving, held) => {
      const whole = wholeCar(car, driving);
      const left = whole.hold(held);
      const { speed = Number.NaN, longitudinalAcceleration = 0, grade = 0, bank = 0 } = driving;
      const ay = held.lateralAcceleration;
      const mass = carMass(car);
      const { along, across, moment } = sums(car, whole, ay / speed ** 2);
      const asked = {
        along: longitudinalAcceleration + gravity * Math.sin(grade),
        across: ay * Math.cos(bank) - gravity * Math.sin(bank),
      };
      const drag = car.dragFactor * speed ** 2;
      expect(left.along).toBeCloseTo((along - drag) / mass - asked.along, 7);
      expect(left.across).toBeCloseTo(across / mass - asked.across, 7);
      const { front: a, rear: b } = axleDistances(car);
      expect(left.outward).toBeCloseTo((-moment * car.wheelbase) / (mass * a * b), 6);
    }),
    { numRuns: 200 },
  );
});

test("each axle is held at the slip angle that is asked, and yaws with the path", () => {
  fc.assert(
    fc.property(anyCar, anyDriving, anyHeld, (car, driving, held) => {
      const whole = wholeCar(car, driving);
      whole.hold(held);
      const { front: a, rear: b } = axleDistances(car);
      const { sideSlip, steer, speed, yawRate } = whole;
      const curvature = held.lateralAcceleration / speed ** 2;
      const goes = (x: number) =>
        Math.atan2(Math.sin(sideSlip) + curvature * x, Math.cos(sideSlip));
      expect(steer - goes(a)).toBeCloseTo(held.front, 9);
      expect(-goes(-b)).toBeCloseTo(held.rear, 9);
      expect(yawRate * speed).toBeCloseTo(held.lateralAcceleration, 9); // r·V = ay
    }),
  );
});

test("round a corner it is the same car as at the speed that its lateral acceleration asks", () => {
  fc.assert(
    fc.property(anyCar, anyDriving, anyHeld, between(15, 120), (car, driving, held, radius) => {
      const { speed: _, cornerRadius: __, ...rest } = driving;
      const speed = Math.sqrt(held.lateralAcceleration * radius); // V² = ay·R
      const round = { ...wholeCar(car, { ...rest, cornerRadius: radius }).hold(held) };
      const fast = wholeCar(car, { ...rest, speed }).hold(held);
      expect(round.along).toBeCloseTo(fast.along, 7);
      expect(round.across).toBeCloseTo(fast.across, 7);
      expect(round.outward).toBeCloseTo(fast.outward, 7);
    }),
  );
});

const loadOf = ({ wheels: { front, rear } }: WholeCar) =>
  [front.left, front.right, rear.left, rear.right].reduce(
    (sum, { stance }) => sum + stance.load,
    0,
  );

test("a hill asks for push as gaining speed does, and takes a little off the weight", () => {
  fc.assert(
    fc.property(anyCar, anyHeld, between(-0.15, 0.15), (car, held, grade) => {
      const bare = { ...car.front, downforceFactor: 0 };
      const light = { ...car, front: bare, rear: { ...car.rear, downforceFactor: 0 } };
      const hill = wholeCar(light, { speed: 25, longitudinalAcceleration: -1, grade });
      const level = wholeCar(light, {
        speed: 25,
        longitudinalAcceleration: -1 + gravity * Math.sin(grade),
      });
      // the same push, steer and slip; only the weight differs, by cos θ
      hill.hold(held);
      level.hold(held);
      expect(loadOf(hill) / loadOf(level)).toBeCloseTo(Math.cos(grade), 9);
      const moved = (of: WholeCar) => {
        const { left, right } = of.wheels.front;
        return left.stance.load + right.stance.load;
      };
      const front = axleDistances(light).rear / light.wheelbase; // share of the weight
      const weight = carMass(light) * gravity * front;
      if (Math.min(moved(hill), moved(level)) > 1 && moved(level) < loadOf(level) - 1)
        expect(moved(level) - moved(hill)).toBeCloseTo(weight * (1 - Math.cos(grade)), 5);
    }),
  );
});

test("a bank presses the car on the road and takes over side force, and all of it at V² = g·R·tan b", () => {
  // by hand: on a bank b nothing across is asked at ay = g·tan b, and m·g/cos b presses down
  const bank = 0.12;
  const ay = gravity * Math.tan(bank);
  const straight = {
    ...neutralCar,
    front: upright(neutralCar.front),
    rear: upright(neutralCar.rear),
  };
  const state = trim(straight, { speed: 40, bank }, ay);
  if (state === undefined) throw new Error("a bank that needs no side force is no limit");
  const { front, rear } = state.wheels;
  const wheels = [front.left, front.right, rear.left, rear.right];
  const load = wheels.reduce((sum, wheel) => sum + wheel.load, 0);
  expect(load / ((carMass(straight) * gravity) / Math.cos(bank))).toBeCloseTo(1, 9);
  expect(front.left.load).toBeCloseTo(front.right.load, -1); // N: no side force moves any
  for (const { slipAngle } of wheels) expect(Math.abs(slipAngle)).toBeLessThan(5e-4);
  expect(state.steer).toBeCloseTo((2.4 * ay) / 40 ** 2, 4); // L/R
});

function upright(axle: HandlingAxle): HandlingAxle {
  return { ...axle, camber: { left: 0, right: 0 } };
}

test("a bank the other way asks for more side force in the same turn", () => {
  const slip = (bank: number) =>
    trim(lightCar, { speed: 25, bank }, 5)?.wheels.front.right.slipAngle;
  expect(slip(-0.1)).toBeGreaterThan(slip(0) ?? Number.NaN);
  expect(slip(0.1)).toBeLessThan(slip(0) ?? Number.NaN);
});

test("a car held again gives the same, whatever it was in between", () => {
  fc.assert(
    fc.property(anyCar, anyDriving, anyHeld, anyHeld, (car, driving, held, other) => {
      const whole = wholeCar(car, driving);
      const before = { ...whole.hold(held) };
      whole.hold(other);
      const after = whole.hold(held);
      expect(after.along).toBeCloseTo(before.along, 7);
      expect(after.across).toBeCloseTo(before.across, 7);
      expect(after.outward).toBeCloseTo(before.outward, 6);
    }),
  );
});

test("more push gains speed, more front slip angle turns in, more rear slip angle turns out", () => {
  fc.assert(
    fc.property(anyCar, between(0.01, 0.04), (car, slip) => {
      const whole = wholeCar(car, { speed: 25 });
      const held = { front: slip, rear: slip, push: 0.3, lateralAcceleration: 4 };
      const at = (more: Partial<Held>) => ({ ...whole.hold({ ...held, ...more }) });
      const here = at({});
      expect(at({ push: 0.8 }).along).toBeGreaterThan(here.along);
      expect(at({ front: slip + 0.005 }).outward).toBeLessThan(here.outward);
      expect(at({ rear: slip + 0.005 }).outward).toBeGreaterThan(here.outward);
    }),
  );
});

test("what is no driving is refused in a sentence", () => {
  expect(() => wholeCar(lightCar, { speed: 0 })).toThrow("speed is 0 m/s");
  expect(() => wholeCar(lightCar, { cornerRadius: 0 })).toThrow("corner radius is 0 m");
  expect(() => wholeCar(lightCar, { speed: 20, bank: 2 })).toThrow("bank is 2 rad");
});

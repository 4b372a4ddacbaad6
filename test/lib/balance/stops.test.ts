import fc from "fast-check";
import { expect, test } from "vitest";
import { stanceInTurn } from "../../../lib/balance/stance-in-turn.js";
import { requireStops, stopForce, stopRate, type WheelStops } from "../../../lib/balance/stops.js";
import { between } from "../evenly.js";
import { lightCar } from "./cars.js";

const both = (value: number) => ({ left: value, right: value });
const stops: WheelStops = {
  bumpLeft: both(0.03),
  droopLeft: both(0.05),
  bumpStop: 4e6,
  droopStop: 10e6,
};
const force = (travel: number) => stopForce(travel, 0.03, 0.05, stops);

test("a bump stop pressed by 10 mm pushes half its growth times the square", () => {
  expect(force(0.04)).toBeCloseTo(200, 9); // by hand: ½ · 4e6 · 0.01²
  expect(force(-0.07)).toBeCloseTo(-2000, 9); // ½ · 10e6 · 0.02²
  expect(force(0.02)).toBe(0);
});

test("force and rate begin at nothing where a wheel first touches", () => {
  for (const touch of [0.03, -0.05]) {
    const beyond = touch + Math.sign(touch) * 1e-9;
    expect(force(touch)).toBe(0);
    expect(Math.abs(force(beyond))).toBeLessThan(1e-9);
    expect(stopRate(beyond, 0.03, 0.05, stops)).toBeLessThan(0.011);
  }
});

test("what a stop takes up on the way in it gives back: force is the slope of an energy", () => {
  // energy ⅙·c·δ³, by hand; its difference over a small way is the force
  const energy = (travel: number) =>
    (4e6 * Math.max(0, travel - 0.03) ** 3 + 10e6 * Math.max(0, -travel - 0.05) ** 3) / 6;
  fc.assert(
    fc.property(between(-0.1, 0.1), (travel) => {
      const slope = (energy(travel + 1e-6) - energy(travel - 1e-6)) / 2e-6;
      expect(force(travel)).toBeCloseTo(slope, 4);
      const stiffness = (force(travel + 1e-6) - force(travel - 1e-6)) / 2e-6;
      expect(stopRate(travel, 0.03, 0.05, stops)).toBeCloseTo(stiffness, 0);
    }),
  );
});

test("stops that make no sense are refused in a sentence", () => {
  expect(() => requireStops("front", { ...stops, bumpStop: -1 })).toThrow("front bump stop is -1");
  expect(() => requireStops("rear", { ...stops, droopLeft: both(NaN) })).toThrow(RangeError);
});

/** The light car with so much free travel at the front, m. */
const stopped = (free: number) => ({
  ...lightCar,
  front: {
    ...lightCar.front,
    stops: { ...stops, bumpLeft: both(free), droopLeft: both(free) },
  },
});

test("while no wheel touches, a car stands as one without stops; travel is told", () => {
  const free = stanceInTurn(lightCar, { speed: 25 }, 7);
  const { front } = free;
  expect(stanceInTurn(stopped(0.2), { speed: 25 }, 7)).toEqual(free);
  // by hand: the wheels are apart by the track for each rad of roll in the suspension
  expect(front.right.travel - front.left.travel).toBeCloseTo(front.suspensionRoll * 1.45, 9);
  expect(front.left.travel).toBeLessThan(0);
});

test("on its stops an axle holds more of the body, and the body rolls less", () => {
  const free = stanceInTurn(lightCar, { speed: 25 }, 9);
  const held = stanceInTurn(stopped(0.01), { speed: 25 }, 9);
  expect(held.front.roll).toBeLessThan(free.front.roll);
  expect(held.front.right.travel).toBeGreaterThan(0.01);
  expect(held.front.right.load).toBeGreaterThan(free.front.right.load + 20);
  expect(held.rear.right.load).toBeLessThan(free.rear.right.load - 20);
});

test("loads have no jump where a wheel reaches its stop as the turn tightens", () => {
  const car = stopped(0.012);
  let before = stanceInTurn(car, { speed: 25 }, 2).front.right.load;
  let touches = false;
  let [least, most] = [Infinity, 0];
  for (let ay = 2.02; ay < 9; ay += 0.02) {
    const { load, travel } = stanceInTurn(car, { speed: 25 }, ay).front.right;
    touches ||= travel > 0.012;
    [least, most] = [Math.min(least, load - before), Math.max(most, load - before)];
    before = load;
  }
  expect(touches).toBe(true);
  expect(least).toBeGreaterThan(0);
  expect(most).toBeLessThan(12); // N; without stops 4 N
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { AxleInRoll, CarInRoll } from "../../../lib/load/car-in-roll.js";
import { distributeLoadTransfer } from "../../../lib/load/distribution.js";
import { GRAVITY } from "../../../lib/units.js";
import { rollByEnergy } from "./roll-by-energy.js";

/** The car that a general multibody program solved, with its axles pinned at the roll centres. */
const pinned: CarInRoll = {
  sprungMass: 1100,
  sprungHeight: 0.48,
  sprungFrontShare: 1.4 / 2.6,
  front: {
    track: 1.5,
    rollStiffness: 0.5 * 45e3 * 1.5 ** 2 + 12e3,
    rollCentreHeight: 0.05,
    unsprungMass: 80,
    unsprungHeight: 0.3,
  },
  rear: {
    track: 1.48,
    rollStiffness: 0.5 * 40e3 * 1.48 ** 2 + 4e3,
    rollCentreHeight: 0.12,
    unsprungMass: 90,
    unsprungHeight: 0.3,
  },
};

describe("against MuJoCo with pinned axles (our run, mujoco-js 0.0.7), within 0.1 %", () => {
  test.each([
    [0.05, 101.936, 94.44],
    [0.3, 611.58, 566.61],
    [0.9, 1833.84, 1699.12],
  ])("at %s g the axles move %s and %s N", (g, front, rear) => {
    const result = distributeLoadTransfer(pinned, g * GRAVITY);
    expect(Math.abs(result.front.total / front - 1)).toBeLessThan(1e-3);
    expect(Math.abs(result.rear.total / rear - 1)).toBeLessThan(1e-3);
  });
});

describe("against Barton & Fieldhouse, Automotive Chassis Engineering, 2018, p. 174", () => {
  const g = 9.81; // the book's
  const [frontPart, rearPart] = [1556, 671]; // N through the springs: the axles share ΣK as these
  const stiffness = 28_650; // N·m/rad, ΣK
  const car: CarInRoll = {
    sprungMass: 1280,
    sprungFrontShare: 0.54,
    sprungHeight: 0.365 + 0.54 * 0.07 + 0.46 * 0.32, // d above the roll axis
    front: {
      track: 1.46,
      rollStiffness: (stiffness * frontPart) / (frontPart + rearPart),
      rollCentreHeight: 0.07,
      unsprungMass: 140,
      unsprungHeight: 0.28,
    },
    rear: {
      track: 1.46,
      rollStiffness: (stiffness * rearPart) / (frontPart + rearPart),
      rollCentreHeight: 0.32,
      unsprungMass: 180,
      unsprungHeight: 0.3,
    },
  };
  const result = distributeLoadTransfer(car, 0.6 * g);

  test("the links move 195.06 N in front and 759.60 N behind", () => {
    expect(result.front.geometric).toBeCloseTo(195.06, 2);
    expect(result.rear.geometric).toBeCloseTo(759.6, 2);
  });

  test("the wheels themselves move 158.04 N and 217.70 N", () => {
    expect(result.front.unsprung).toBeCloseTo(158.04, 2);
    expect(result.rear.unsprung).toBeCloseTo(217.7, 1);
  });

  test("in all 1909 N move in front and 1649 N behind, within 1 %", () => {
    // the book prints 1919 N in front, of parts that sum to 1909 N; and 2227 N through the springs,
    // where its own roll angle times ΣK over the track is 2242 N
    expect(Math.abs(result.front.total / (frontPart + 195 + 158) - 1)).toBeLessThan(0.01);
    expect(Math.abs(result.rear.total / (rearPart + 760 + 218) - 1)).toBeLessThan(0.01);
    const elastic = result.front.elastic + result.rear.elastic;
    expect(elastic).toBeCloseTo((stiffness * 10.912 * 0.6 * (Math.PI / 180)) / 1.46, -1);
  });

  test("the body rolls 10.912 degrees for each g", () => {
    const perG = result.rollAngle.front / 0.6 / (Math.PI / 180);
    expect(Math.abs(perG / 10.912 - 1)).toBeLessThan(1e-3); // 9.81 there, 9.80665 here
  });
});

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyAxle: fc.Arbitrary<AxleInRoll> = fc.record({
  track: between(1, 2),
  rollStiffness: between(15e3, 2e5),
  rollCentreHeight: between(-0.1, 0.4),
  unsprungMass: between(20, 200),
  unsprungHeight: between(0.2, 0.4),
  tyreRollStiffness: fc.oneof(fc.constant(Infinity), between(80e3, 400e3)),
  ownForceShare: between(-0.2, 1.2),
  independent: fc.boolean(),
});
const anyCar: fc.Arbitrary<CarInRoll> = fc.record({
  sprungMass: between(400, 2500),
  sprungHeight: between(0.2, 0.9),
  sprungFrontShare: between(0.3, 0.7),
  front: anyAxle,
  rear: anyAxle,
});
const weightOf = (car: CarInRoll) =>
  (car.sprungMass + car.front.unsprungMass + car.rear.unsprungMass) * GRAVITY;

test("the four loads sum to the weight and none is below zero, wheels up or down", () => {
  fc.assert(
    fc.property(anyCar, between(-30, 30), (car, ay) => {
      const { front, rear } = distributeLoadTransfer(car, ay);
      const loads = [front.load.left, front.load.right, rear.load.left, rear.load.right];
      const sum = loads.reduce((a, b) => a + b);
      expect(Math.abs(sum / weightOf(car) - 1)).toBeLessThan(1e-9);
      for (const load of loads) expect(load).toBeGreaterThanOrEqual(0);
    }),
  );
});

test("the moment of the loads is the moment of the side forces and of the leaning body", () => {
  fc.assert(
    fc.property(anyCar, between(-30, 30), (car, ay) => {
      const result = distributeLoadTransfer(car, ay);
      fc.pre(!result.tipped);
      const made = result.front.total * car.front.track + result.rear.total * car.rear.track;
      const unsprung = (axle: AxleInRoll) => axle.unsprungMass * axle.unsprungHeight;
      const heights = car.sprungMass * car.sprungHeight + unsprung(car.front) + unsprung(car.rear);
      const asked = heights * ay + result.momentFromRoll;
      expect(Math.abs(made - asked)).toBeLessThan(1e-9 * Math.max(1, Math.abs(asked)));
    }),
  );
});

test("no stiffness changes the total, but for what the leaning body adds", () => {
  fc.assert(
    fc.property(anyCar, between(0.1, 6), between(1, 4), (car, ay, factor) => {
      const parts = (c: CarInRoll) => {
        const { front, rear, momentFromRoll, tipped } = distributeLoadTransfer(c, ay);
        fc.pre(!tipped);
        const moment = front.total * c.front.track + rear.total * c.rear.track;
        return { level: moment - momentFromRoll, moment };
      };
      const rollStiffness = car.front.rollStiffness * factor;
      const [soft, stiff] = [parts(car), parts({ ...car, front: { ...car.front, rollStiffness } })];
      expect(Math.abs(stiff.level - soft.level)).toBeLessThan(1e-9 * soft.moment);
    }),
  );
});

test("stiffening one end moves transfer to it, if the other could hold the body up alone", () => {
  fc.assert(
    fc.property(anyCar, between(0.5, 5), between(1.01, 3), (car, ay, factor) => {
      fc.pre(car.rear.rollStiffness > car.sprungMass * GRAVITY * (car.sprungHeight + 0.1));
      const soft = distributeLoadTransfer(car, ay);
      const rollStiffness = car.front.rollStiffness * factor;
      const stiff = distributeLoadTransfer({ ...car, front: { ...car.front, rollStiffness } }, ay);
      fc.pre(!soft.front.lifted && !soft.rear.lifted && !stiff.front.lifted);
      fc.pre(soft.rollAngle.front > soft.tyreAngle.front); // the body leans on its front springs
      const rounding = 1e-9; // N
      expect(stiff.front.elastic - soft.front.elastic).toBeGreaterThanOrEqual(-rounding);
      expect(stiff.rear.elastic - soft.rear.elastic).toBeLessThanOrEqual(rounding);
    }),
  );
});

test("a right turn is the mirror of a left turn", () => {
  fc.assert(
    fc.property(anyCar, between(0, 30), (car, ay) => {
      const [left, right] = [distributeLoadTransfer(car, ay), distributeLoadTransfer(car, -ay)];
      expect(right.front.load.left).toBeCloseTo(left.front.load.right, 9);
      expect(right.rear.total).toBeCloseTo(-left.rear.total, 9);
      expect(right.rollAngle.front).toBeCloseTo(-left.rollAngle.front, 12);
      expect(right.frontShare).toBeCloseTo(left.frontShare, 12);
    }),
  );
});

test("an axle with a wheel in the air passes the rest to the other, and then the car tips", () => {
  const stiffRear = { ...pinned, rear: { ...pinned.rear, rollStiffness: 3e5 } };
  const onThree = distributeLoadTransfer(stiffRear, 11);
  expect(onThree.rear.lifted).toBe(true);
  expect(onThree.front.lifted).toBe(false);
  expect(onThree.rear.load.left).toBeCloseTo(0, 9);
  expect(onThree.tipped).toBe(false);
  const over = distributeLoadTransfer(stiffRear, 16);
  expect(over.tipped).toBe(true);
  expect(over.front.load.left).toBeCloseTo(0, 9);
});

test("a chassis that twists lets each end roll for itself, a stiff one does not", () => {
  const twisting = distributeLoadTransfer({ ...pinned, torsionStiffness: 2e5 }, 5);
  const stiff = distributeLoadTransfer(pinned, 5);
  const nearlyStiff = distributeLoadTransfer({ ...pinned, torsionStiffness: 1e11 }, 5);
  expect(nearlyStiff.front.total).toBeCloseTo(stiff.front.total, 3);
  expect(twisting.rollAngle.front).not.toBeCloseTo(twisting.rollAngle.rear, 5);
  expect(twisting.total).toBeCloseTo(stiff.total, -1);
});

test("with no torsional stiffness to speak of each end carries itself", () => {
  const { front } = distributeLoadTransfer({ ...pinned, torsionStiffness: 1 }, 3);
  const mass = (pinned.sprungMass * 1.4) / 2.6; // by hand: one end alone
  const arm = 0.48 - 0.05;
  const angle = (mass * 3 * arm) / (pinned.front.rollStiffness - mass * GRAVITY * arm);
  expect(front.elastic).toBeCloseTo((pinned.front.rollStiffness * angle) / 1.5, 1);
});

test("a tyre is squashed by all that its axle moves, and roll of body and axle add up", () => {
  fc.assert(
    fc.property(anyCar, between(0.1, 6), (car, ay) => {
      const result = distributeLoadTransfer(car, ay);
      fc.pre(!result.front.lifted && !result.rear.lifted);
      for (const end of ["front", "rear"] as const) {
        const { tyreRollStiffness = Infinity, track } = car[end];
        const angle = (result[end].total * track) / tyreRollStiffness;
        expect(Math.abs(result.tyreAngle[end] - angle)).toBeLessThan(
          1e-12 + 1e-9 * Math.abs(angle),
        );
      }
    }),
  );
});

test("springs, tyres, links and wheels stand at the lowest point of their energy", () => {
  fc.assert(
    fc.property(anyCar, (car) => {
      fc.pre(car.front.tyreRollStiffness !== Infinity && car.rear.tyreRollStiffness !== Infinity);
      const ay = 1e-3;
      const result = distributeLoadTransfer(car, ay);
      const lowest = rollByEnergy(car);
      const alike = (value: number, other: number) =>
        expect(Math.abs(value / ay - other)).toBeLessThan(1e-9 + 1e-6 * Math.abs(other));
      alike(result.rollAngle.front, lowest.body);
      alike(result.tyreAngle.front, lowest.front);
      alike(result.tyreAngle.rear, lowest.rear);
      alike(result.front.total, lowest.transferFront);
      alike(result.rear.total, lowest.transferRear);
    }),
  );
});

test("springs too soft to hold the body up are refused", () => {
  const soft = { ...pinned, front: { ...pinned.front, rollStiffness: 0 } };
  expect(() =>
    distributeLoadTransfer({ ...soft, rear: { ...soft.rear, rollStiffness: 100 } }, 1),
  ).toThrow(/^roll stiffness of the two axles together/);
});

test("braking while turning takes load from the rear, never below nothing", () => {
  const hard = distributeLoadTransfer({ ...pinned, longitudinalTransfer: -20e3 }, 2);
  expect(hard.rear.load.left).toBe(0);
  expect(hard.front.load.left + hard.front.load.right).toBeCloseTo(weightOf(pinned), 6);
});

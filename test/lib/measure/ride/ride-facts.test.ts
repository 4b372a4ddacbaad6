import { describe, expect, test, vi } from "vitest";
import type { HandlingCar } from "../../../../lib/balance/handling-car.js";
import { handlingCarOf } from "../../../../lib/balance/handling-car-of.js";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { NINE_IN_TEN } from "../../../../lib/measure/measured.js";
import type { Ride, Three } from "../../../../lib/measure/ride/ride.js";
import { type RideFacts, rideFacts } from "../../../../lib/measure/ride/ride-facts.js";
import { sameDriving } from "../../../../lib/measure/ride/same-driving.js";
import { DEGREE } from "../../../../lib/units.js";
import {
  anyPhone,
  asAPhoneFelt,
  leaningRoad,
  type Phone,
  type True,
  tenTurns,
  trueDrive,
  turningOf,
} from "./simulated-ride.js";

/** Drives, each felt by several phones that lie anyhow: 18 rides, and 300 in the long tier. */
const LONG = process.env.LAW_RUNS !== undefined;
const [DRIVES, PHONES] = LONG ? [30, 10] : [3, 6];

vi.setConfig({ testTimeout: LONG ? 1_200_000 : 120_000 });

interface Tried {
  readonly drive: readonly True[];
  readonly phone: Phone;
  readonly facts: RideFacts;
}

/** The workbook's car, softer or stiffer in roll. */
function carOf(seed: number): HandlingCar {
  const by = [1, 0.7, 1.5][seed % 3] ?? 1;
  const axle = (end: "front" | "rear") => {
    const { spring, ...rest } = demoCar[end];
    return { ...rest, spring: { ...spring, rate: spring.rate * by } };
  };
  return handlingCarOf({ ...demoCar, front: axle("front"), rear: axle("rear") });
}

const tried: Tried[] = Array.from({ length: DRIVES }, (_, k) => k + 1).flatMap((seed) => {
  const road = leaningRoad(seed);
  const drive = trueDrive(carOf(seed), tenTurns(seed), road);
  return Array.from({ length: PHONES }, (_, j) => {
    const phone = anyPhone(100 * seed + j);
    return { drive, phone, facts: rideFacts(asAPhoneFelt(drive, road, phone, 100 * seed + j)) };
  });
});

/** Roll over acceleration across the road where both have settled. */
function trueGradient(drive: readonly True[]): number {
  const settled = drive.filter(
    ({ across, rollRate, yawAcceleration }) =>
      Math.abs(across) > 3 && Math.abs(rollRate) < 0.002 && Math.abs(yawAcceleration) < 0.02,
  );
  const sum = (of: (one: True) => number) => settled.reduce((all, one) => all + of(one), 0);
  return sum(({ roll, across }) => roll * across) / sum(({ across }) => across ** 2);
}

const share = (all: readonly boolean[]) => all.filter(Boolean).length / all.length;

describe(`${DRIVES * PHONES} simulated rides: any mounting, 25–100 Hz, steps, bias, dropouts, late speeds, a road that leans`, () => {
  test("the stated band holds the true roll gradient as often as it says", () => {
    const held = tried.map(({ drive, facts }) => {
      const { value = NaN, spread = NaN } = facts.rollGradient ?? {};
      return Math.abs(value - trueGradient(drive)) < NINE_IN_TEN * spread;
    });
    expect(share(held)).toBeGreaterThanOrEqual(LONG ? 0.84 : 0.75); // of 18, 14 or more
    if (LONG) expect(share(held)).toBeLessThanOrEqual(0.96);
  });

  test("each way by itself holds it too, the balance of accelerations and the summed-up roll rate", () => {
    for (const way of ["balance", "integrated"] as const) {
      const held = tried.map(({ drive, facts }) => {
        const { value = NaN, spread = NaN } = facts.rollGradient?.[way] ?? {};
        return Math.abs(value - trueGradient(drive)) < NINE_IN_TEN * spread;
      });
      expect(share(held), way).toBeGreaterThanOrEqual(0.75);
    }
  });

  test("the band of ten clean turns is no more than 15 % of the roll gradient", () => {
    const wide = tried.map(({ facts: { rollGradient } }) => {
      const { value = NaN, spread = NaN } = rollGradient ?? {};
      return (NINE_IN_TEN * spread) / value;
    });
    expect(Math.max(...wide)).toBeLessThan(0.15);
  });

  test("steady acceleration is within 3 % nineteen times in twenty", () => {
    const off = tried.flatMap(({ drive, facts }) =>
      facts.corners.flatMap(({ begins, ends, steady }) => {
        const now = drive[Math.round((begins + ends) / 2 / 0.01)];
        return steady === undefined || !now ? [] : [steady / Math.abs(turningOf(now)) - 1];
      }),
    );
    expect(off.length).toBeGreaterThan(9 * tried.length);
    expect(share(off.map((one) => Math.abs(one) < 0.03))).toBeGreaterThan(0.95);
  });

  test("all ten turns are found, each to its side, with its entry speed", () => {
    for (const { drive, facts } of tried) {
      const steady = facts.corners.filter((corner) => corner.steady !== undefined);
      expect(steady.length).toBeGreaterThanOrEqual(8); // a dropout may take one
      for (const { begins, ends, way, entrySpeed = NaN } of steady) {
        const [entry, middle] = [begins, (begins + ends) / 2].map(
          (time) => drive[Math.round(time / 0.01)] as True,
        ) as [True, True];
        expect(way).toBe(middle.yaw > 0 ? "left" : "right");
        expect(Math.abs(entrySpeed - entry.speed)).toBeLessThan(0.9);
      }
    }
  });

  test("how the phone lies is found to a degree, besides how the road leans it, and its sides", () => {
    for (const { phone, facts } of tried) {
      const { axes, sidesKnown, forceSign } = facts.mounting;
      expect(sidesKnown).toBe(true);
      expect(forceSign).toBe(phone.forceSign);
      for (const [i, axis] of axes.entries()) {
        const truly = phone.lies.map((row) => row[i] ?? 0) as unknown as Three;
        const along = axis[0] * truly[0] + axis[1] * truly[1] + axis[2] * truly[2];
        expect(along).toBeGreaterThan(Math.cos(2.2 * DEGREE)); // the car stood on a degree of slope
      }
    }
  });

  test("satellites' lag is found to a sixth of a second, their scatter to a third", () => {
    for (const { phone, facts } of tried) {
      expect(Math.abs((facts.satellites?.lag ?? NaN) - phone.late)).toBeLessThan(1 / 6);
      expect(Math.abs((facts.satellites?.scatter ?? NaN) / 0.3 - 1)).toBeLessThan(1 / 3);
    }
  });

  test("bias of the turn rates is found to 0.05 °/s", () => {
    for (const { phone, facts } of tried) {
      for (const [i, bias] of facts.rest.bias.entries()) {
        const truly = phone.bias[phone.order[i] ?? 0] ?? 0;
        expect(Math.abs(bias - truly)).toBeLessThan(0.05 * DEGREE);
      }
    }
  });
});

const road = leaningRoad(2);
const [{ drive, phone }] = tried as [Tried];
const ride = asAPhoneFelt(drive, leaningRoad(1), phone, 7);

describe("satellites that tell speed later than they should", () => {
  const lateBy = (late: number) =>
    rideFacts(asAPhoneFelt(drive, leaningRoad(1), { ...phone, late }, 7));

  test("by two and a half seconds are found so, and tell as much as before", () => {
    const { satellites, speedsLeftOut, rollGradient } = lateBy(2.5);
    expect(Math.abs((satellites?.lag ?? NaN) - 2.5)).toBeLessThan(1 / 6);
    expect(speedsLeftOut).toBe(false);
    expect(rollGradient?.balance).toBeDefined();
  });

  test.each([4, 10])("by %i s are left out, which is told: no speed, no side", (late) => {
    const { satellites, speedsLeftOut, mounting, rollGradient, corners } = lateBy(late);
    expect([satellites, speedsLeftOut, mounting.sidesKnown]).toEqual([undefined, true, false]);
    expect(corners.some(({ entrySpeed }) => entrySpeed !== undefined)).toBe(false);
    const { value = NaN, integrated } = rollGradient ?? {};
    expect(integrated).toBeDefined();
    expect(Math.abs(value / trueGradient(drive) - 1)).toBeLessThan(0.1);
  });
});

describe("worse sensors, and a ride that begins as the car drives off", () => {
  const worse: Phone = {
    ...phone,
    bias: [3 * DEGREE, -5 * DEGREE, 4 * DEGREE],
    shakes: { force: 0.5, turn: 1 * DEGREE },
  };
  const felt = asAPhoneFelt(drive, leaningRoad(1), worse, 7);
  const from = (seconds: number): Ride => ({
    felt: felt.felt.filter(({ time }) => time > 100 + seconds),
    fixes: felt.fixes.filter(({ time }) => time > 100 + seconds),
  });

  test.each([
    ["from the start", 0],
    ["from an even push of 3 m/s² that lasts longer than any rest", 6],
    ["from between two turns", 30],
  ])("rest is where it stood, %s", (_, seconds) => {
    const { rest, rollGradient, corners } = rideFacts(from(seconds));
    for (const [i, bias] of rest.bias.entries())
      expect(Math.abs(bias - (worse.bias[worse.order[i] ?? 0] ?? 0))).toBeLessThan(0.2 * DEGREE);
    const { value = NaN, spread = NaN } = rollGradient ?? {};
    expect(Math.abs(value - trueGradient(drive))).toBeLessThan(2.5 * spread);
    expect(corners.length).toBeGreaterThanOrEqual(8);
  });
});

describe("a ride without satellites", () => {
  const facts = rideFacts({ ...ride, fixes: [] });

  test("tells roll by the roll rate alone, and no speeds", () => {
    const { value = NaN, balance, integrated } = facts.rollGradient ?? {};
    expect(balance).toBeUndefined();
    expect(integrated).toBeDefined();
    expect(Math.abs(value / trueGradient(drive) - 1)).toBeLessThan(0.1);
    expect([facts.satellites, facts.speedsLeftOut]).toEqual([undefined, false]);
    for (const { entrySpeed, radius } of facts.corners)
      expect([entrySpeed, radius]).toEqual([undefined, undefined]);
  });

  test("says that left and right may be exchanged", () => {
    expect(facts.mounting.sidesKnown).toBe(false);
  });
});

describe("what is no ride is refused", () => {
  const cut = (from: number, to: number): Ride => ({
    felt: ride.felt.filter(({ time }) => time - 100 >= from && time - 100 < to),
    fixes: [],
  });

  test("one of eight seconds, and one with times that go back", () => {
    expect(() => rideFacts(cut(0, 8))).toThrow(/length of the ride is .* but must be/);
    const felt = [...ride.felt];
    felt.splice(300, 1, { ...(felt[300] as Ride["felt"][number]), time: 0 });
    expect(() => rideFacts({ felt, fixes: [] })).toThrow(/time of sample 301/);
  });

  test("one with what is no number, and one too slow for a body's roll", () => {
    const felt = ride.felt.map((one, i) => (i === 5 ? { ...one, time: NaN } : one));
    expect(() => rideFacts({ felt, fixes: [] })).toThrow(/no number/);
    const slow = ride.felt.filter((_, i) => i % 20 === 0);
    expect(() => rideFacts({ felt: slow, fixes: [] })).toThrow(/samples a second/);
  });

  test("one that only stands, and one that never stands", () => {
    const stands = Array.from({ length: 40 }, (_, i) =>
      cut(0, 5).felt.map((one) => ({ ...one, time: one.time + 5 * i })),
    );
    expect(() => rideFacts({ felt: stands.flat(), fixes: [] })).toThrow(/no straight braking/);
    const shaken = ride.felt.map(({ time, force, turn }, i) => ({
      ...{ time, turn },
      force: [force[0] + 5 * Math.sin(i / 9), force[1], force[2]] as Three,
    }));
    expect(() => rideFacts({ felt: shaken, fixes: [] })).toThrow(/stood still/);
  });

  test("one that only goes straight", () => {
    const level = { angle: 0, of: "road" } as const;
    const straight = trueDrive(carOf(1), tenTurns(1, 1), level).filter(({ time }) => time < 15);
    expect(() => rideFacts(asAPhoneFelt(straight, level, phone, 3))).toThrow(/no turns/);
  });
});

test("a drive felt by two phones that lie otherwise was driven the same way", () => {
  const [a, b] = tried.filter((one) => one.drive === drive) as [Tried, Tried];
  const told = sameDriving(a.facts.corners, b.facts.corners);
  expect(told.same).toBe(true);
  expect(told.variation).toBe("usual");
  expect(told.corners.length).toBeGreaterThanOrEqual(8);
});

test("the same turns taken 8 % faster are told from it, by speed", () => {
  const faster = tenTurns(1).map((turn) => ({ ...turn, speed: turn.speed * 1.08 }));
  const second = trueDrive(carOf(1), faster, road);
  const facts = rideFacts(asAPhoneFelt(second, road, phone, 9));
  const { same, habits } = sameDriving((tried[0] as Tried).facts.corners, facts.corners);
  expect(same).toBe(false);
  const speed = habits.find(({ habit }) => habit === "entrySpeed");
  expect(speed?.differs).toBe(true);
  expect(Math.abs((speed?.by ?? 0) - 0.08)).toBeLessThan(0.02);
});

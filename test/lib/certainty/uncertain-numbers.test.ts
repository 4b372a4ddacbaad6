import { describe, expect, test } from "vitest";
import { barRateOf } from "../../../lib/car/axle.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { formatCar, parseCar } from "../../../lib/car/file/parse.js";
import { reflected } from "../../../lib/certainty/uncertain-number.js";
import { uncertainNumbersOf } from "../../../lib/certainty/uncertain-numbers.js";
import { otherCars } from "../../../site/chapter/other-cars.js";
import { beam, wishbones } from "../linkage/reference-corners.js";

const linnet: Car = { ...demoCar, name: "Linnet" };
const numberOf = (car: Car, path: string) =>
  uncertainNumbersOf(car).find((number) => number.path === path);
const all = [demoCar, ...otherCars].flatMap((car) =>
  uncertainNumbersOf(car).map((number) => [`${number.path} of ${car.name}`, car, number] as const),
);

test.each(all)("%s is got, set and got again", (_, car, { value, spread, min, max, get, set }) => {
  expect(get(car)).toBe(value);
  expect(spread).toBeGreaterThan(0);
  expect(value).toBeGreaterThanOrEqual(min);
  expect(value).toBeLessThanOrEqual(max);
  const before = JSON.stringify(car);
  const next = reflected(value + spread / 10, min, max);
  const changed = set(car, next);
  expect(get(changed) / next).toBeCloseTo(1, 9);
  expect(parseCar(formatCar(changed)).faults).toBeUndefined();
  const back = set(changed, value);
  expect(get(back)).toBeCloseTo(value, 9);
  expect(JSON.stringify(car)).toBe(before);
});

describe("where a number comes from", () => {
  test("is what the file says, spread and all", () => {
    const known = {
      "front.spring.rate": { how: "measured", spread: 500 },
      wheelbase: { how: "maker" },
      "rear.track": { how: "copied" },
    } as const;
    const car = { ...linnet, known };
    expect(numberOf(car, "front.spring.rate")).toMatchObject({ how: "measured", spread: 500 });
    expect(numberOf(car, "wheelbase")).toMatchObject({ how: "maker", spread: 0.005 });
    expect(numberOf(car, "rear.track")?.how).toBe("copied");
    const sure = { ...linnet, known: { wheelbase: { how: "measured", spread: 0 } as const } };
    expect(numberOf(sure, "wheelbase")).toBeUndefined();
  });

  test("is an estimate where it says nothing; the workbook's own car has an honest owner", () => {
    expect(new Set(uncertainNumbersOf(linnet).map(({ how }) => how))).toEqual(
      new Set(["estimated"]),
    );
    expect(numberOf(demoCar, "body.mass")?.how).toBe("measured");
    expect(numberOf(demoCar, "front.spring.rate")?.how).toBe("maker");
    expect(numberOf(demoCar, "body.height")?.how).toBe("estimated");
  });

  test("is a measurement for what follows from joints", () => {
    const linkage = { kind: "independent", left: wishbones } as const;
    const car = { ...linnet, front: { ...linnet.front, linkage } };
    expect(numberOf(car, "front.geometry.rollCentreHeight")?.how).toBe("measured");
    expect(numberOf(car, "rear.geometry.rollCentreHeight")?.how).toBe("estimated");
  });
});

describe("what a file leaves out", () => {
  test("may be off all the same where figures take something for it", () => {
    const degreePerKilonewton = Math.PI / 180 / 1000;
    expect(numberOf(linnet, "front.tyre.grip")?.value).toBe(1);
    expect(numberOf(linnet, "front.geometry.complianceSteer")?.value).toBeCloseTo(
      0.2 * degreePerKilonewton, // common practice, no source
      12,
    );
    expect(numberOf(linnet, "tyre.bestPressure")?.value).toBeCloseTo(200e3, -1); // the club tyre says so
  });

  test("is not off where there is nothing: no bar, no stop, nobody in the seat, no beam", () => {
    const road = { ...linnet.rear, tyre: { ...linnet.rear.tyre, name: "published road" } };
    const tyres = uncertainNumbersOf({ ...linnet, rear: road }).map(({ path }) => path);
    expect(tyres).toContain("front.tyre.bestPressure");
    expect(tyres).not.toContain("rear.tyre.bestPressure"); // its friction has no top
    const { bar: _, ...front } = linnet.front;
    const { bumpTravel: __, ...geometry } = front.geometry;
    const car = { ...linnet, front: { ...front, geometry } };
    const paths = uncertainNumbersOf(car).map(({ path }) => path);
    expect(paths).toContain("rear.bar.rate");
    expect(paths.filter((path) => /^front\.bar|^front\.geometry\.bump/.test(path))).toEqual([]);
    expect(paths.filter((path) => /passenger|ballast|rollSteer/.test(path))).toEqual([]);
    const withBeam = { ...linnet.rear, spring: { ...linnet.rear.spring, spacing: 1 } };
    const beamPaths = uncertainNumbersOf({
      ...linnet,
      rear: { ...withBeam, linkage: beam },
    }).map(({ path }) => path);
    expect(beamPaths).toContain("rear.geometry.rollSteer");
    expect(beamPaths).not.toContain("rear.geometry.camberGain");
  });
});

describe("what several places share", () => {
  test("a gauge reads all four tyres too high or too low by the same", () => {
    const gauge = numberOf(demoCar, "pressureGauge");
    const car = gauge?.set(demoCar, 205e3);
    for (const end of ["front", "rear"] as const)
      expect(car?.[end].tyre.pressure).toEqual({ left: 205e3, right: 205e3 });
  });

  test("a good day multiplies the grip of both axles, each with its own", () => {
    const front = { ...demoCar.front, tyre: { ...demoCar.front.tyre, grip: 1.1 } };
    const car = { ...demoCar, front };
    const day = numberOf(car, "gripOfTheDay");
    const better = day?.set(car, 1.05 * 1.05);
    expect(better?.front.tyre.grip).toBeCloseTo(1.1 * 1.05, 12);
    expect(better?.rear.tyre.grip).toBeCloseTo(1.05, 12);
  });

  test("the same tyre front and rear is off the same way; two tyres are not", () => {
    const stiff = numberOf(demoCar, "tyre.stiffness")?.set(demoCar, 1.1);
    expect([stiff?.front.tyre.stiffness, stiff?.rear.tyre.stiffness]).toEqual([1.1, 1.1]);
    const rear = { ...demoCar.rear, tyre: { ...demoCar.rear.tyre, name: "published road" } };
    const paths = uncertainNumbersOf({ ...demoCar, rear }).map(({ path }) => path);
    expect(paths).toContain("front.tyre.stiffness");
    expect(paths).toContain("rear.tyre.stiffness");
    expect(paths).not.toContain("tyre.stiffness");
  });
});

describe("the rate of a bar", () => {
  test("moves all its positions together, so that they keep their order", () => {
    const bar = numberOf(demoCar, "front.bar.rate"); // 46 N/mm in the stiffest
    const rates = bar?.set(demoCar, 50.6e3).front.bar?.positions.map(({ rate = 0 }) => rate);
    [0, 15.4e3, 24.2e3, 35.2e3, 50.6e3].forEach((rate, i) => {
      expect(rates?.[i]).toBeCloseTo(rate, 6);
    });
  });

  test("of arms on a tube moves with the tube", () => {
    const tube = { diameter: 0.025, innerDiameter: 0.02, length: 0.9 };
    const positions = [{ armLength: 0.24 }, { armLength: 0.2 }];
    const bar = { motionRatio: 0.6, positions, position: 1, tube };
    const car = { ...demoCar, front: { ...demoCar.front, bar } };
    const number = numberOf(car, "front.bar.rate");
    if (number === undefined) throw new Error("the bar has a rate");
    const stiffer = number.set(car, number.value * 1.2).front.bar;
    if (stiffer === undefined) throw new Error("the bar is still there");
    for (const position of [1, 2])
      expect(barRateOf({ ...stiffer, position }) / barRateOf({ ...bar, position })).toBeCloseTo(
        1.2,
        9,
      );
  });

  test("is as sure as the file says of the position in use", () => {
    const known = { "front.bar.positions.2.rate": { how: "measured", spread: 1100 } } as const;
    const number = numberOf({ ...linnet, known }, "front.bar.rate"); // 1.1 of 22 N/mm is 5 %
    expect(number?.how).toBe("measured");
    expect(number?.spread).toBeCloseTo(0.05 * 46e3, 6);
  });
});

test("a value beyond its range is reflected at the end, and held at the other", () => {
  expect(reflected(3, 0, 10)).toBe(3);
  expect(reflected(-2, 0, 10)).toBe(2);
  expect(reflected(12, 0, 10)).toBe(8);
  expect(reflected(-50, 0, 10)).toBe(10);
  expect(reflected(50, 0, 10)).toBe(0);
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { frontShareOf, totalMassOf } from "../../../lib/car/masses.js";
import { uncertainNumbersOf } from "../../../lib/certainty/uncertain-numbers.js";
import { figuresOf } from "../../../lib/change/figures.js";
import { firstCar, tyreRadiusOf } from "../../../lib/measure/first-car.js";
import type { FirstCar } from "../../../lib/measure/first-car-given.js";
import { between } from "../evenly.js";
import { axle, readBack, rookWith } from "./first-rook.js";

const given = rookWith({ ...axle, bar: 0, rideHeight: 0.14 });

const anyAxle = fc.record({
  track: between(1.2, 1.7),
  kind: fc.constantFrom("independent" as const, "beam" as const),
  tyreRadius: between(0.24, 0.36),
  pressure: between(150e3, 250e3),
  bar: fc.oneof(fc.constant(0), between(0.01, 0.03)),
  rideHeight: between(0.06, 0.22),
});
const anyGiven: fc.Arbitrary<FirstCar> = fc.record({
  name: fc.constant("Rook"),
  mass: between(600, 1900),
  frontShare: between(0.4, 0.65),
  wheelbase: between(2, 3),
  driven: fc.constantFrom("front", "rear", "all"),
  seat: fc.constantFrom("left", "middle", "right"),
  front: anyAxle,
  rear: anyAxle,
});

describe("a first car", () => {
  test("weighs what was read, where it was read, whatever the rest is (60 cases)", () => {
    fc.assert(
      fc.property(anyGiven, (given) => {
        const whole = totalMassOf(readBack(firstCar(given)));
        expect(whole.mass).toBeCloseTo(given.mass, 1);
        expect(frontShareOf(whole, given.wheelbase)).toBeCloseTo(given.frontShare, 4);
        expect(whole.leftOfCentre).toBeCloseTo(0, 4);
      }),
      { numRuns: 60 },
    );
  });

  test("can be read as a file and stands on its springs (60 cases)", () => {
    fc.assert(
      fc.property(anyGiven, (given) => {
        const { rideFrequency } = figuresOf(standingCar(readBack(firstCar(given))));
        for (const hertz of [rideFrequency.front, rideFrequency.rear]) {
          expect(hertz).toBeGreaterThan(0.9); // what cars have on their tyres: common practice, no source
          expect(hertz).toBeLessThan(3);
        }
      }),
      { numRuns: 60 },
    );
  });

  test("says of every number that bears on a turn that it is estimated, and how far it may be off", () => {
    const numbers = uncertainNumbersOf(readBack(firstCar(given)));
    const measured = /^wheelbase$|\.(track|rideHeight|tyre\.pressure\.\w+)$/;
    for (const { path, how, spread } of numbers) {
      expect(how, path).toBe(measured.test(path) ? "measured" : "estimated");
      expect(spread, path).toBeGreaterThan(0);
    }
    const at = (path: string) => numbers.find((one) => one.path === path);
    expect(at("body.height")?.spread ?? 0).toBeGreaterThan(0.045);
    expect((at("front.bar.rate")?.spread ?? 0) / (at("front.bar.rate")?.value ?? 1)).toBeCloseTo(
      0.35,
      3,
    );
    expect(numbers.length).toBeGreaterThan(60);
  });

  test("a lower car bounces faster and has its centre of gravity lower", () => {
    const low = { ...axle, rideHeight: 0.08 };
    const [car, lower] = [given, { ...given, front: low, rear: low }].map((one) =>
      readBack(firstCar(one)),
    );
    if (!car || !lower) throw new Error("no cars");
    expect(totalMassOf(lower).height).toBeLessThan(totalMassOf(car).height);
    expect(lower.front.spring.rate).toBeGreaterThan(car.front.spring.rate);
  });

  test("a tyre of 195/50 R 15 stands 0.288 m from rim and wall", () => {
    expect(tyreRadiusOf({ width: 195, aspect: 50, rim: 15 })).toBeCloseTo(0.1905 + 0.0975, 10);
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { standingCar } from "../../../lib/balance/standing-car.js";
import type { Car } from "../../../lib/car/car.js";
import { carFromJson } from "../../../lib/car/file/parse.js";
import { frontShareOf, totalMassOf } from "../../../lib/car/masses.js";
import { uncertainNumbersOf } from "../../../lib/certainty/uncertain-numbers.js";
import { figuresOf } from "../../../lib/change/figures.js";
import { firstCar, tyreRadiusOf } from "../../../lib/measure/first-car.js";
import type { FirstCar } from "../../../lib/measure/first-car-given.js";
import { between } from "../evenly.js";

const axle = {
  track: 1.45,
  kind: "independent",
  tyreRadius: 0.29,
  pressure: 200e3,
  bar: 0.018,
  rideHeight: 0.13,
} as const;
const given: FirstCar = {
  ...{ name: "Rook", mass: 1080, frontShare: 0.52, wheelbase: 2.4, driven: "rear", seat: "left" },
  front: axle,
  rear: { ...axle, bar: 0, rideHeight: 0.14 },
};

function read(content: unknown): Car {
  const { car, faults } = carFromJson(JSON.parse(JSON.stringify(content)));
  if (car === undefined) throw new Error(faults?.join(" "));
  return car;
}

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
        const whole = totalMassOf(read(firstCar(given)));
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
        const { rideFrequency } = figuresOf(standingCar(read(firstCar(given))));
        for (const hertz of [rideFrequency.front, rideFrequency.rear]) {
          expect(hertz).toBeGreaterThan(0.9); // what cars have on their tyres: common practice, no source
          expect(hertz).toBeLessThan(3);
        }
      }),
      { numRuns: 60 },
    );
  });

  test("says of every number that bears on a turn that it is estimated, and how far it may be off", () => {
    const numbers = uncertainNumbersOf(read(firstCar(given)));
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
      read(firstCar(one)),
    );
    if (!car || !lower) throw new Error("no cars");
    expect(totalMassOf(lower).height).toBeLessThan(totalMassOf(car).height);
    expect(lower.front.spring.rate).toBeGreaterThan(car.front.spring.rate);
  });

  test("a tyre of 195/50 R 15 stands 0.288 m from rim and wall", () => {
    expect(tyreRadiusOf({ width: 195, aspect: 50, rim: 15 })).toBeCloseTo(0.1905 + 0.0975, 10);
  });
});

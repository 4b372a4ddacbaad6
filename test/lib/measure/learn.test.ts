import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rideRateOf, wheelRateOf } from "../../../lib/car/axle.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { totalMassOf } from "../../../lib/car/masses.js";
import { sampleOf } from "../../../lib/certainty/sample-car.js";
import { uncertainNumbersOf } from "../../../lib/certainty/uncertain-numbers.js";
import { learnt, type Observation } from "../../../lib/measure/learn.js";
import { NINE_IN_TEN } from "../../../lib/measure/measured.js";
import { predictedRollGradient } from "../../../lib/measure/ride/predicted-roll.js";
import { apparentRollStiffnessOf } from "../../../lib/measure/sill-weight.js";
import { normalFrom, randomFrom } from "../../../lib/random.js";

const estimated: Car = { ...demoCar, name: "Rook" }; // nothing in its file: all is estimated
const numbersLike = (bears: RegExp) =>
  uncertainNumbersOf(estimated).filter(({ path }) => bears.test(path));
const springs = numbersLike(/spring\.(rate|motionRatio)$/);

const observe = (
  id: string,
  of: (car: Car) => number,
  value: number,
  spread: number,
): Observation => ({
  ...{ id, of },
  measured: { value, spread },
});

describe("a car that learns", () => {
  test("from its wheel rate: rate and ratio move by their shares of its doubt, by hand", () => {
    const own = wheelRateOf(demoCar.front);
    const reading = observe("ride", (car) => wheelRateOf(car.front), own * 1.1, own * 0.01);
    const { numbers, told, byChance } = learnt(estimated, [reading], springs);
    expect(numbers.map(({ path }) => path)).toEqual([
      "front.spring.motionRatio",
      "front.spring.rate",
    ]);
    // ln k = ln c + 2 ln i: spreads 8 % and 2·5 %, so 64 and 100 parts of ln 1.1, less 1 part of 165
    const [ratio, rate] = numbers;
    const [ofRatio, ofRate] = [100 / 165 / 2, 64 / 165].map((part) => part * Math.log(1.1));
    expect((ratio?.after.value ?? 0) / 0.65 - 1).toBeCloseTo(ofRatio ?? 0, 2);
    expect((rate?.after.value ?? 0) / 60e3 - 1).toBeCloseTo(ofRate ?? 0, 2);
    expect((ratio?.after.spread ?? 0) / (ratio?.before.spread ?? 1)).toBeCloseTo(
      Math.sqrt(65 / 165),
      1,
    );
    expect(told[0]?.after ?? 0).toBeCloseTo(own * 1.1, -2);
    expect(byChance).toBeGreaterThan(0.2);
    expect(ratio?.because).toEqual([{ id: "ride", share: 1 }]);
  });

  test("learns nothing from what its numbers do not bear on", () => {
    const reading = observe("height", (car) => totalMassOf(car).height, 0.6, 0.01);
    expect(learnt(estimated, [reading], springs).numbers).toEqual([]);
  });

  test("stays inside the ranges of its file, however far off a reading is", () => {
    const reading = observe("ride", (car) => wheelRateOf(car.front), 1e7, 1);
    const { numbers, byChance } = learnt(estimated, [reading], springs);
    for (const { path, after } of numbers) {
      const { min = 0, max = 0 } = springs.find((one) => one.path === path) ?? {};
      expect(after.value).toBeGreaterThanOrEqual(min);
      expect(after.value).toBeLessThanOrEqual(max);
    }
    expect(byChance).toBeLessThan(0.01);
  });

  test("names the reading that does not go with the others", () => {
    const at = (id: string, factor: number) =>
      observe(id, (car) => wheelRateOf(car.front), 25_350 * factor, 300);
    const { odd, byChance } = learnt(estimated, [at("a", 1), at("b", 1.01), at("c", 1.4)], springs);
    expect(byChance).toBeLessThan(0.05);
    expect(odd).toBe("c");
  });

  test("refuses no reading at all, and one without doubt", () => {
    expect(() => learnt(estimated, [], springs)).toThrow(/at least one reading/);
    const exact = observe("ride", (car) => wheelRateOf(car.front), 1, 0);
    expect(() => learnt(estimated, [exact], springs)).toThrow(/at least one reading/);
  });

  const many = (fc.readConfigureGlobal()?.numRuns ?? 100) > 100; // the long tier
  const [cars, least, most] = many ? [1000, 0.88, 0.92] : [200, 0.84, 0.95];

  test(`holds the truth nine times in ten, and is surer than before (${cars} cars made up, readings with their errors)`, () => {
    const numbers = numbersLike(
      /^(body\.height|tyre\.stiffness|(front|rear)\.(spring\.(rate|motionRatio)|bar\.(rate|motionRatio)))$/,
    );
    const random = randomFrom(17);
    const kinds = [
      { id: "front ride", of: (car: Car) => rideRateOf(car.front), share: 0.03 },
      { id: "rear ride", of: (car: Car) => rideRateOf(car.rear), share: 0.03 },
      { id: "sill", of: apparentRollStiffnessOf, share: 0.03 },
      { id: "ride along", of: predictedRollGradient, share: 0.04 },
      { id: "height", of: (car: Car) => totalMassOf(car).height, share: 0.03 },
    ];
    let [holds, all, narrower] = [0, 0, 0];
    for (let k = 0; k < cars; k++) {
      const truth = sampleOf(estimated, numbers, 5, k).of(estimated);
      const readings = kinds.map(({ id, of, share }) => {
        const spread = share * of(estimated);
        return observe(id, of, of(truth) + spread * normalFrom(random), spread);
      });
      for (const { path, before, after } of learnt(estimated, readings, numbers).numbers) {
        const real = numbers.find((one) => one.path === path)?.get(truth) ?? Number.NaN;
        all++;
        if (Math.abs(real - after.value) <= NINE_IN_TEN * after.spread) holds++;
        narrower += after.spread / before.spread;
      }
    }
    expect(all).toBeGreaterThan(5 * cars);
    expect(holds / all).toBeGreaterThan(least);
    expect(holds / all).toBeLessThan(most);
    expect(narrower / all).toBeLessThan(0.85);
  });
});

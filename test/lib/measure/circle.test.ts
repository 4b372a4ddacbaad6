import { describe, expect, test } from "vitest";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { accelerationOfLap, circleLimit } from "../../../lib/measure/circle.js";
import { circleDifference } from "../../../lib/measure/circle-difference.js";
import { circleGradient } from "../../../lib/measure/circle-gradient.js";
import { predictedCircle } from "../../../lib/measure/circle-predicted.js";
import { NINE_IN_TEN } from "../../../lib/measure/measured.js";
import { normalFrom, randomFrom } from "../../../lib/random.js";

const circle = { radius: { value: 20, spread: 0.1 }, stopwatch: 0.1 };
const timeFor = (turn: number) => 2 * Math.PI * Math.sqrt(20 / turn); // T = 2π√(R/a)

/** Laps at an acceleration, each as far off as a driver and a stopwatch are. */
function lapsAt(turn: number, count: number, scatter: number, random: () => number): number[] {
  return Array.from({ length: count }, () => timeFor(turn + scatter * normalFrom(random)));
}

describe("a lap of a circle", () => {
  test("on a skid pad of 15.25 m in 5.0 s is 24.08 m/s²; twice the time is a quarter of it", () => {
    expect(accelerationOfLap(15.25, 5)).toBeCloseTo(4 * 9.8696044 * (15.25 / 25), 5); // π² = 9.8696044
    expect(accelerationOfLap(20, 20)).toBeCloseTo(accelerationOfLap(20, 10) / 4, 12);
  });

  test("is refused for a radius or a time that none has", () => {
    expect(() => accelerationOfLap(2, 10)).toThrow(/radius/);
    expect(() => accelerationOfLap(20, 0)).toThrow(/lap time/);
  });
});

describe("the limit", () => {
  test("is the mean of the three fastest laps, in any order, with the stopwatch's doubt at least", () => {
    const times = [10.2, 10, 11.5, 10.1];
    const told = circleLimit(circle, times);
    const mean =
      [10, 10.1, 10.2].reduce((sum, time) => sum + (4 * Math.PI ** 2 * 20) / time ** 2, 0) / 3;
    expect(told.value).toBeCloseTo(mean, 12);
    expect(circleLimit(circle, [...times].reverse()).value).toBeCloseTo(mean, 12);
    const alike = circleLimit(circle, [10, 10, 10]);
    const watch = ((2 * 7.8957) / 10) * 0.1; // da/dT = −2a/T
    expect(alike.spread).toBeCloseTo(Math.hypot(watch / Math.sqrt(3), (7.8957 * 0.1) / 20), 4);
  });
});

describe("the difference of two set-ups", () => {
  test("of 0.03 m/s² is not called measured after four laps each, however alike they are", () => {
    const told = circleDifference(circle, {
      before: [Array(4).fill(timeFor(8))],
      after: [Array(4).fill(timeFor(8.03))],
    });
    expect(told.value).toBeCloseTo(0.03, 6);
    expect(told.measured).toBe(false);
    expect(told.lapsMore).toBeGreaterThan(20);
  });

  test("of nothing at all is called measured no more than once in twenty (600 cases)", () => {
    const random = randomFrom(11);
    const fine = { ...circle, stopwatch: 0.01 };
    for (const runs of [1, 3]) {
      let called = 0;
      for (let i = 0; i < 600; i++) {
        const side = () => Array.from({ length: runs }, () => lapsAt(8, 3, 0.15, random));
        if (circleDifference(fine, { before: side(), after: side() }).measured) called++;
      }
      expect(called / 600).toBeLessThan(0.05 + 3 * 0.009); // three standard deviations of the count
      expect(called / 600).toBeGreaterThan(0.02);
    }
  });

  test("that is there lies in its interval nine times in ten, drift of the day or not, run beside run", () => {
    const random = randomFrom(4);
    const fine = { ...circle, stopwatch: 0.01 };
    let holds = 0;
    for (let i = 0; i < 600; i++) {
      const drift = (run: number) => -0.1 * run; // m/s² a run, as tyres go off
      const pairs = [0, 1, 2, 3].map((k) => {
        const [first, then] = k % 2 === 0 ? [2 * k, 2 * k + 1] : [2 * k + 1, 2 * k]; // A B, B A, …
        return [
          lapsAt(8 + drift(first), 3, 0.15, random),
          lapsAt(8.3 + drift(then), 3, 0.15, random),
        ];
      });
      const told = circleDifference(fine, {
        before: pairs.map(([before = []]) => before),
        after: pairs.map(([, after = []]) => after),
      });
      expect(told.paired).toBe(true);
      if (Math.abs(told.value - 0.3) <= told.within) holds++;
    }
    expect(holds / 600).toBeGreaterThan(0.87);
    expect(holds / 600).toBeLessThan(0.98);
  });

  test("that is there is measured once the laps that it asked for were driven, mostly (100 cases)", () => {
    const random = randomFrom(9);
    const fine = { ...circle, stopwatch: 0.01 };
    let [asked, shown] = [0, 0];
    for (let i = 0; i < 100; i++) {
      const few = { before: [lapsAt(8, 3, 0.15, random)], after: [lapsAt(8.25, 3, 0.15, random)] };
      const { lapsMore, measured, value } = circleDifference(fine, few);
      if (measured || value < 0.1) continue;
      asked++;
      const { lapsMore: none, measured: then } = circleDifference(fine, {
        before: Array.from({ length: 1 + Math.ceil(lapsMore / 3) }, () =>
          lapsAt(8, 3, 0.15, random),
        ),
        after: Array.from({ length: 1 + Math.ceil(lapsMore / 3) }, () =>
          lapsAt(8.25, 3, 0.15, random),
        ),
      });
      expect(then ? none : 0).toBe(0);
      if (then) shown++;
    }
    expect(asked).toBeGreaterThan(20);
    expect(shown / asked).toBeGreaterThan(0.65);
  });

  test("one lap each is refused", () => {
    expect(() => circleDifference(circle, { before: [[10]], after: [[9]] })).toThrow(
      /two clean laps/,
    );
  });
});

describe("the understeer gradient", () => {
  const ratio = 15;
  const [gradient, wheelbase] = [0.004, 2.4];
  const steady = (turns: readonly number[], random?: () => number) =>
    turns.map((turn) => ({
      time: timeFor(turn),
      rim: ratio * (wheelbase / 20 + gradient * turn) + (random ? 0.02 * normalFrom(random) : 0),
    }));

  test("and the steering ratio come back from laps without error", () => {
    const told = circleGradient(demoCar, circle, steady([0.5, 1, 2, 3, 3.8]), 0.02);
    expect(told.gradient.value).toBeCloseTo(gradient, 9);
    expect(told.steeringRatio?.value ?? 0).toBeCloseTo(ratio, 9);
  });

  test("laps beyond the even part are left out where three are in it", () => {
    const bent = [...steady([0.5, 1.5, 3]), { time: timeFor(7.5), rim: 4 }];
    expect(circleGradient(demoCar, circle, bent, 0.02).gradient.value).toBeCloseTo(gradient, 9);
    expect(circleGradient(demoCar, circle, bent, 0.02).laps).toBe(3);
  });

  test("holds the truth nine times in ten with a tape at the rim (500 cases)", () => {
    const random = randomFrom(21);
    let holds = 0;
    for (let i = 0; i < 500; i++) {
      const laps = steady([0.5, 1.2, 2, 2.8, 3.6], random);
      const told = circleGradient(demoCar, { ...circle, stopwatch: 0.01 }, laps, 0.02).gradient;
      if (Math.abs(told.value - gradient) <= NINE_IN_TEN * told.spread) holds++;
    }
    expect(holds / 500).toBeGreaterThan(0.86);
    expect(holds / 500).toBeLessThan(0.97);
  });

  test("two laps are refused", () => {
    expect(() => circleGradient(demoCar, circle, steady([1, 2]), 0.02)).toThrow(
      /three steady laps/,
    );
  });
});

test("the model's lap of a circle has its own limit, and a car that understeers says so", () => {
  const told = predictedCircle(handlingCarOf(demoCar), 20);
  expect(accelerationOfLap(20, told.lapTime)).toBeCloseTo(told.limit, 9);
  expect(told.limit).toBeGreaterThan(6);
  expect(told.limit).toBeLessThan(12);
  const rearGone = {
    ...demoCar,
    rear: { ...demoCar.rear, tyre: { ...demoCar.rear.tyre, grip: 0.6 } },
  };
  expect(predictedCircle(handlingCarOf(rearGone), 20).limit).toBeLessThan(told.limit);
});

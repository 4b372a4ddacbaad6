import { describe, expect, test, vi } from "vitest";
import { phaseNames } from "../../../lib/balance/phases.js";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { bandSampler, changeBands, marginBands } from "../../../lib/certainty/band-sampler.js";
import type { UncertainNumber } from "../../../lib/certainty/uncertain-number.js";
import { uncertainNumbersOf } from "../../../lib/certainty/uncertain-numbers.js";
import type { Change } from "../../../lib/change/change.js";
import { baselineOf, effectOf } from "../../../lib/change/effect.js";

vi.setConfig({ testTimeout: 120_000 });

const numbers = uncertainNumbersOf(demoCar);
const times = (factor: number): UncertainNumber[] =>
  numbers.map((number) => ({ ...number, spread: number.spread * factor }));
const stiffer: Change = { lever: "barPosition", end: "front", by: 1 };
const softer: Change = { lever: "barPosition", end: "front", by: -1 };
const pressure: Change = { lever: "tyrePressure", end: "rear", by: 5e3 };
const springs: Change = { lever: "springRate", end: "front", by: 5e3 };
const own = baselineOf(standingCar(demoCar)).behaviour.phases;

describe("a car of which everything is exact", () => {
  const sampler = bandSampler(demoCar, [stiffer, springs], { numbers: [] });
  sampler.take(4);

  test("has bands without width, about what it does", () => {
    const bands = sampler.margins();
    for (const phase of phaseNames)
      for (const key of ["understeerMargin", "lateralAcceleration"] as const) {
        const { value, band, sign } = bands[phase][key];
        expect(value).toBe(own[phase][key]);
        for (const end of ["low", "middle", "high"] as const) {
          expect(band[end].value).toBeCloseTo(value, 5);
          expect(band[end].error).toBe(0);
        }
        expect(sign.share).toBe(1);
      }
    expect(bands.middle.widest).toEqual([]);
    expect(bands.middle.tips).toBe(0);
  });

  test("is changed as the change says, put back where it must be", () => {
    const [bar, spring] = sampler.changes();
    const before = baselineOf(standingCar(demoCar));
    const { moved } = effectOf(stiffer, before);
    expect(bar?.phases?.middle.understeerMargin.value).toBe(moved.phases.middle.understeerMargin);
    expect(bar?.phases?.middle.understeerMargin.band.low.value).toBeCloseTo(
      moved.phases.middle.understeerMargin,
      6,
    );
    const { putBack } = effectOf(springs, before);
    expect(putBack).toBeDefined();
    expect(spring?.refused === undefined && spring?.putBack?.middle.understeerMargin.value).toBe(
      putBack?.moved.phases.middle.understeerMargin,
    );
  });
});

test("the same seed gives the same bands, taken at once or bit by bit; another seed others", () => {
  const [once, bits, other] = [1, 1, 2].map((seed) => bandSampler(demoCar, [stiffer], { seed }));
  once?.take(10);
  for (let i = 0; i < 5; i++) bits?.take(2);
  other?.take(10);
  expect(bits?.margins()).toEqual(once?.margins());
  expect(bits?.changes()).toEqual(once?.changes());
  expect(other?.margins()).not.toEqual(once?.margins());
  expect([once?.count, once?.lost]).toEqual([10, 0]);
});

test("twice the doubt gives about twice the band, in every part of a corner", () => {
  const width = (factor: number, samples: number) => {
    const bands = marginBands(demoCar, { numbers: times(factor), samples });
    return phaseNames.map((phase) => {
      const { low, high } = bands[phase].understeerMargin.band;
      return high.value - low.value;
    });
  };
  const [narrow, wide] = [width(0.25, 40), width(0.5, 40)];
  narrow.forEach((once, i) => {
    const twice = wide[i] ?? 0;
    expect(twice / once).toBeGreaterThan(1.6);
    expect(twice / once).toBeLessThan(2.4);
  });
});

test("a narrow band is as wide as its parts, each worked out by itself, say", () => {
  // To first order the variance is the sum of (dm/dx·σ)² – JCGM 100:2008, equation 10. Numbers are
  // moved one at a time here; the sampler moves all together.
  const small = times(0.25);
  const margin = (car: typeof demoCar) =>
    baselineOf(standingCar(car)).behaviour.phases.middle.understeerMargin;
  const parts = small.map(({ path, value, spread, min, max, get, set }) => {
    const [up, down] = [spread, -spread].map((off) => {
      const moved = value + off;
      return moved < min || moved > max ? demoCar : set(demoCar, get(demoCar) + off);
    });
    const both = [up, down].filter((car) => car !== demoCar).length;
    const apart = margin(up ?? demoCar) - margin(down ?? demoCar);
    return { path, part: both === 0 ? 0 : (apart / both) ** 2 };
  });
  const variance = parts.reduce((sum, { part }) => sum + part, 0);
  const { understeerMargin, widest } = marginBands(demoCar, {
    numbers: small,
    samples: 200,
  }).middle;
  const { low, high } = understeerMargin.band;
  const deviation = (high.value - low.value) / (2 * 1.644854);
  const error = Math.hypot(low.error, high.error) / (2 * 1.644854);
  expect(Math.abs(deviation - Math.sqrt(variance))).toBeLessThan(3 * error);
  const shareOf = (path = "") => (parts.find((part) => part.path === path)?.part ?? 0) / variance;
  for (const { path, share } of widest.slice(0, 4))
    expect(Math.abs(share - shareOf(path)), path).toBeLessThan(0.2); // 4 · 2r(1 − r²)/√100 pairs
  const most = Math.max(...parts.map(({ path }) => shareOf(path)));
  expect(shareOf(widest[0]?.path)).toBeGreaterThan(0.6 * most);
});

describe("changes with bands", () => {
  const sampler = bandSampler(demoCar, [stiffer, softer, pressure]);
  sampler.take(40);
  const [up, down] = sampler.changes();

  test("are told with how often their sign holds: a bar is sure", () => {
    // A stiffer front bar moves load at the front, where grip falls with load: understeer
    // – Milliken 1995, ch. 18
    expect(up?.phases?.middle.understeerMargin.value).toBeGreaterThan(0);
    expect(up?.phases?.middle.understeerMargin.sign.verdict).toBe("sure");
    expect(down?.phases?.middle.understeerMargin.value).toBeLessThan(0);
    expect(down?.phases?.middle.understeerMargin.sign.verdict).toBe("sure");
  });

  test("are surer than the margin that they move: what a car has in common before and after is no doubt", () => {
    const margin = sampler.margins().middle.understeerMargin.band;
    const moved = up?.phases?.middle.understeerMargin.band;
    const width = (band = margin) => band.high.value - band.low.value;
    expect(width(moved)).toBeLessThan(width(margin));
  });

  test("are ranked by what is asked for, in groups", () => {
    const more = sampler.ranked((moved) => moved.middle.understeerMargin);
    const less = sampler.ranked((moved) => -moved.middle.understeerMargin);
    expect(more[0]).toEqual([stiffer]);
    expect(less[0]).toEqual([softer]);
    expect(more.flat()).toHaveLength(3);
    expect(sampler.ranked(() => 1)).toHaveLength(1);
  });
});

test("a change that cannot be made is told with its sentence, beside those that can", () => {
  const far: Change = { lever: "springRate", end: "front", by: 1e6 };
  const [refused, made] = changeBands(demoCar, [far, stiffer], { samples: 4 });
  expect(refused).toEqual({
    change: far,
    refused: "front spring rate is 1060000 N/m but must be from 40000 to 90000 N/m.",
  });
  expect(made?.phases?.middle.understeerMargin.band.count).toBe(4);
});

test("bands are of the car as it is set, off by what its measured file leaves open", () => {
  const set = { ...demoCar, front: { ...demoCar.front, spring: { ...demoCar.front.spring } } };
  const lower = { ...set.front.spring, seatTurns: { left: -4, right: -4 } };
  const car = { ...set, front: { ...set.front, spring: lower } };
  const bands = marginBands(car, { measured: demoCar, samples: 10 });
  const { behaviour } = baselineOf(standingCar(car, demoCar));
  expect(bands.middle.understeerMargin.value).toBe(behaviour.phases.middle.understeerMargin);
});

test("there are no bands before there are samples", () => {
  expect(() => bandSampler(demoCar).margins()).toThrow(RangeError);
});

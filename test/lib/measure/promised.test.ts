import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { phaseNames } from "../../../lib/balance/phases.js";
import type { Car } from "../../../lib/car/car.js";
import { type BandSampler, bandSampler } from "../../../lib/certainty/band-sampler.js";
import { sampleOf } from "../../../lib/certainty/sample-car.js";
import { spreadOf, spreads } from "../../../lib/certainty/spreads.js";
import { uncertainNumbersOf } from "../../../lib/certainty/uncertain-numbers.js";
import { nextToMeasure, placesOf, type Sharpening } from "../../../lib/measure/next-to-measure.js";
import { axle, firstRook } from "./first-rook.js";

vi.setConfig({ testTimeout: 600_000 });

const many = (fc.readConfigureGlobal()?.numRuns ?? 100) > 100; // the long tier
const [cars, samples, each, meanOff] = many ? [3, 120, 2, 0.08] : [1, 60, 1, 0.15];

/** Width of the band that nine in ten lie in, of the margin in each part of a corner. */
const widths = (sampler: BandSampler) => {
  const margins = sampler.margins();
  return phaseNames.map((name) => {
    const { low, high } = margins[name].understeerMargin.band;
    return high.value - low.value;
  });
};

const sampled = (car: Car): BandSampler => {
  const sampler = bandSampler(car, [], { seed: 3 });
  sampler.take(samples);
  return sampler;
};

/** The car once a measurement was taken in: its numbers as they were, with the spread that measuring leaves. */
function takenIn(car: Car, one: Sharpening): Car {
  const numbers = uncertainNumbersOf(car);
  const known = placesOf(one).flatMap((path) => {
    const number = numbers.find((each) => each.path === path);
    const row = spreads[path.replace(/^(front|rear)\./, "{end}.")];
    if (number === undefined || row === undefined) return [];
    const spread = Math.min(number.spread, spreadOf(row, "measured", number.value));
    return [[path, { how: "measured" as const, spread }] as const];
  });
  return { ...car, known: { ...car.known, ...Object.fromEntries(known) } };
}

test(`what a measurement is said to take away of the doubt of the balance is gone once it is taken in (${cars} cars made up)`, () => {
  const first = firstRook({ ...axle, kind: "independent", bar: 0.018 });
  const numbers = uncertainNumbersOf(first);
  const off: number[] = [];
  for (let k = 0; k < cars; k++) {
    const car = { ...sampleOf(first, numbers, 21, k).of(first), name: "Rook" };
    const before = sampled(car);
    const promised = nextToMeasure(car, before.doubts())
      .filter(({ id }) => id !== "brake-share") // of a maker, not measured
      .sort((a, b) => b.ofBalance - a.ofBalance)
      .slice(0, each);
    const was = widths(before);
    for (const one of promised) {
      const is = widths(sampled(takenIn(car, one)));
      const left = is.map((width, i) => (width / (was[i] ?? 1)) ** 2); // of the variance
      off.push(1 - left.reduce((sum, part) => sum + part / left.length, 0) - one.ofBalance);
    }
  }
  const mean = off.reduce((sum, one) => sum + one, 0) / off.length;
  expect(off).toHaveLength(each * cars);
  expect(Math.abs(mean)).toBeLessThan(meanOff); // widths of few samples, and shares only as far as figures are straight
  for (const one of off) expect(Math.abs(one)).toBeLessThan(0.2);
});

import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { type PhaseName, phaseNames } from "../../../lib/balance/phases.js";
import { standingCar } from "../../../lib/balance/standing-car.js";
import type { Car } from "../../../lib/car/car.js";
import { type BandSampler, bandSampler } from "../../../lib/certainty/band-sampler.js";
import { marginBandsFrom } from "../../../lib/certainty/margin-bands.js";
import { sampleOf } from "../../../lib/certainty/sample-car.js";
import { type Sample, sampledCar } from "../../../lib/certainty/sampled-behaviour.js";
import { sharedDoubts } from "../../../lib/certainty/shared-doubts.js";
import { spreadOf, spreads } from "../../../lib/certainty/spreads.js";
import { uncertainNumbersOf } from "../../../lib/certainty/uncertain-numbers.js";
import { baselineOf } from "../../../lib/change/effect.js";
import { nextToMeasure, placesOf, type Sharpening } from "../../../lib/measure/next-to-measure.js";
import { normalFrom, randomFrom } from "../../../lib/random.js";
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

const firstOne = firstRook({ ...axle, kind: "independent", bar: 0.018 });
const usual = uncertainNumbersOf(firstOne);

/** A car that the first one may really be. */
const madeUp = (k: number): Car => ({
  ...sampleOf(firstOne, usual, 21, k).of(firstOne),
  name: "Rook",
});

const meanOf = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;

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
  const off: number[] = [];
  for (let k = 0; k < cars; k++) {
    const car = madeUp(k);
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
  expect(off).toHaveLength(each * cars);
  expect(Math.abs(meanOf(off))).toBeLessThan(meanOff); // widths of few samples, and shares only as far as figures are straight
  for (const one of off) expect(Math.abs(one)).toBeLessThan(0.2);
});

const bearing = // most on balance, of what is estimated; grip nobody measures by such means
  /^(body\.height|(front|rear)\.(tyre\.grip|spring\.(rate|motionRatio)|bar\.(rate|motionRatio)))$/;
const done: readonly Sharpening[] = [
  { id: "raised-axle" },
  ...(["front", "rear"] as const).flatMap((end) => [
    { id: "ride-rate", end } as const,
    { id: "motion-ratio", end } as const,
  ]),
];
const bearsOn = (car: Car) => uncertainNumbersOf(car).filter(({ path }) => bearing.test(path));

/** m/s² that each number's spread moves the margin in each part of a corner, on a straight line. */
function slopesOf(car: Car): number[][] {
  const own = baselineOf(standingCar(car));
  const margins = (off: Car) => {
    const { phases } = sampledCar(standingCar(off), own.speed, own.corners);
    return phaseNames.map((name) => phases[name].understeerMargin);
  };
  const here = margins(car);
  return bearsOn(car).map(({ value, spread, set }) =>
    margins(set(car, value + spread / 10)).map((one, i) => 10 * (one - (here[i] ?? 0))),
  );
}

/** Samples of a car whose margins go in proportion with its numbers, whose spreads are so much narrower. */
function straightSamples(slopes: readonly number[][], narrower: readonly number[]): Sample[] {
  const random = randomFrom(12);
  return Array.from({ length: 4000 }, () => {
    const deviations = slopes.map(() => normalFrom(random));
    const margin = (i: number) =>
      deviations.reduce((sum, one, k) => sum + one * (narrower[k] ?? 1) * (slopes[k]?.[i] ?? 0), 0);
    const phases = Object.fromEntries(
      phaseNames.map((name, i) => [name, { understeerMargin: margin(i), lateralAcceleration: 0 }]),
    ) as Sample["phases"];
    return { deviations, phases, tips: [], moved: [] };
  });
}

const several = many ? 20 : 3;

test(`five measurements narrow the band of balance by the factor promised, as squares add up (${several} cars made up)`, () => {
  for (let k = 0; k < several; k++) {
    const car = madeUp(k);
    const numbers = bearsOn(car);
    const paths = numbers.map(({ path }) => path);
    const spreadIn = (one: Car) => bearsOn(one).map(({ spread }) => spread);
    const [was, is] = [car, done.reduce(takenIn, car)].map(spreadIn) as [number[], number[]];
    const narrower = was.map((spread, i) => (is[i] ?? 0) / spread);
    const slopes = slopesOf(car);

    const byHand = phaseNames.map((_, i) => {
      const squares = slopes.map((row) => (row[i] ?? 0) ** 2);
      const left = squares.map((square, n) => square * (narrower[n] ?? 1) ** 2);
      return left.reduce((sum, one) => sum + one, 0) / squares.reduce((sum, one) => sum + one, 0);
    });
    const before = straightSamples(
      slopes,
      narrower.map(() => 1),
    );
    const promised = nextToMeasure(car, sharedDoubts(before, 0, paths))
      .filter(({ id, end }) => done.some((one) => one.id === id && one.end === end))
      .reduce((sum, { ofBalance }) => sum + ofBalance, 0);
    expect(Math.abs(1 - promised - meanOf(byHand))).toBeLessThan(0.05);

    const after = straightSamples(slopes, narrower);
    const bands = [before, after].map((samples) =>
      marginBandsFrom((samples[0] as Sample).phases, samples, paths),
    );
    const width = (when: number, name: PhaseName) => {
      const { low, high } = bands[when]?.[name].understeerMargin.band ?? {};
      return (high?.value ?? NaN) - (low?.value ?? NaN);
    };
    for (const [i, name] of phaseNames.entries()) {
      const factor = width(1, name) / width(0, name);
      expect(Math.abs(factor / Math.sqrt(byHand[i] ?? 0) - 1)).toBeLessThan(0.06);
    }
  }
});

import { type PhaseName, phaseNames } from "../balance/phases.js";
import type { PhaseFigures } from "../change/behaviour.js";
import { type Band, bandOf } from "./band.js";
import { type Holds, signHolds } from "./sign-holds.js";

/** Figures of every part of a corner. */
export type Phases = Readonly<Record<PhaseName, PhaseFigures>>;

/** A figure with its band, and how often its sign holds. */
export interface Banded {
  /** Of the car as its file has it. */
  readonly value: number;
  readonly band: Band;
  readonly sign: Holds;
}

/** Balance and grip in one part of a corner, with bands. */
export type BandedPhase = Readonly<Record<keyof PhaseFigures, Banded>>;

const keys: readonly (keyof PhaseFigures)[] = ["understeerMargin", "lateralAcceleration"];

/** The bands of figures of every part of a corner, from samples of them. */
export function bandedPhases(
  own: Phases,
  samples: readonly Phases[],
): Readonly<Record<PhaseName, BandedPhase>> {
  return forEach(phaseNames, (phase) =>
    forEach(keys, (key) => banded(own[phase][key], seriesOf(samples, phase, key))),
  );
}

/** One figure of every sample. */
export function seriesOf(
  samples: readonly Phases[],
  phase: PhaseName,
  key: keyof PhaseFigures,
): number[] {
  return samples.map((sample) => sample[phase][key]);
}

const STILL = 1e-4; // m/s², more than the solver strays by and less than anybody can use

const banded = (value: number, samples: readonly number[]): Banded => ({
  value,
  band: bandOf(samples),
  sign: signHolds(value, samples, STILL),
});

/** Something for each of some names. */
export function forEach<Name extends string, T>(
  names: readonly Name[],
  work: (name: Name) => T,
): Record<Name, T> {
  return Object.fromEntries(names.map((name) => [name, work(name)])) as Record<Name, T>;
}

import { type PhaseName, phaseNames } from "../balance/phases.js";
import { type DoubtShare, doubtShares } from "./doubt-shares.js";
import { type BandedPhase, bandedPhases, forEach, type Phases, seriesOf } from "./phase-bands.js";
import type { Sample } from "./sampled-behaviour.js";

/** What a car does in one part of a corner, with bands and what widens them. */
export interface MarginBand extends BandedPhase {
  /** Whose doubts widen the band of the margin, the most first. */
  readonly widest: readonly DoubtShare[];
  /** Share of the samples that tip over before their tyres let go, 0–1: their margin is no balance. */
  readonly tips: number;
}

/** Bands of a car in every part of a corner. */
export type MarginBands = Readonly<Record<PhaseName, MarginBand>>;

/**
 * The bands of a car from samples of it.
 *
 * @param own - of the car as its file has it
 * @param paths - of the numbers that are off in the samples, in their order
 * @throws Refusal without samples
 */
export function marginBandsFrom(
  own: Phases,
  samples: readonly Sample[],
  paths: readonly string[],
): MarginBands {
  const phases = samples.map((sample) => sample.phases);
  const deviations = samples.map((sample) => sample.deviations);
  const banded = bandedPhases(own, phases);
  return forEach(phaseNames, (name) => ({
    ...banded[name],
    widest: doubtShares(
      paths,
      deviations,
      seriesOf(phases, name, "understeerMargin"),
      Math.ceil(samples.length / 2), // they come in opposite pairs
    ),
    tips: samples.filter(({ tips }) => tips.includes(name)).length / samples.length,
  }));
}

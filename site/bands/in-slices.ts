import { type BandSampler, bandSampler, Refusal } from "@rollbook/lib";
import type { BandsOf, BandsSoFar } from "./ask.js";

const most = 500;
const first = { count: 40, within: 1200, least: 10 }; // samples, ms, samples when time is up

/** Samples that are told after so many: each time half as many again, so that a reader is not kept busy. */
const nextAfter = (count: number): number =>
  count >= most ? Number.POSITIVE_INFINITY : Math.min(most, Math.max(first.count, 1.5 * count));

/** Samples of one car, each taken part by part, and when they are worth telling. */
class Samples {
  readonly #sampler: BandSampler;
  readonly #tell: (bands: BandsSoFar) => void;
  readonly #started = performance.now();
  #next = first.count;
  #under: Iterator<void, void> | undefined;

  constructor(sampler: BandSampler, tell: (bands: BandsSoFar) => void) {
    this.#sampler = sampler;
    this.#tell = tell;
  }

  /** A part of one sample; false where all are there. */
  step(): boolean {
    this.#under ??= this.#sampler.takeOne();
    if (!this.#under.next().done) return true;
    this.#under = undefined;
    const { count, lost } = this.#sampler;
    const taken = count + lost;
    if (this.#isDue(count) || (taken === most && count > 0)) this.#tellSoFar();
    return taken < most;
  }

  #isDue(count: number): boolean {
    if (count % 2 === 1 || count === 0) return false; // they come in opposite pairs
    const early = this.#next === first.count && performance.now() - this.#started > first.within;
    return count >= (early ? first.least : this.#next);
  }

  #tellSoFar(): void {
    const { count, lost } = this.#sampler;
    this.#next = nextAfter(count);
    const [margins, changes] = [this.#sampler.margins(), this.#sampler.changes()];
    this.#tell({ count, of: most - lost, margins, changes, doubts: this.#sampler.doubts() });
  }
}

/** The sampler of a car; none of one that cannot stand. */
function samplerOf(of: BandsOf): BandSampler | undefined {
  try {
    return bandSampler(of.car, of.changes, of);
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

/**
 * Samples a car in slices of so many ms, and tells its bands from time to time, for as long as they
 * are wanted. A car that cannot stand has none.
 */
export function sampleInSlices(
  of: BandsOf,
  slice: number,
  wanted: () => boolean,
  tell: (bands: BandsSoFar) => void,
): void {
  function go(samples: Samples): void {
    const end = performance.now() + slice;
    while (wanted()) {
      if (!samples.step()) return;
      if (performance.now() >= end) {
        setTimeout(go, 0, samples);
        return;
      }
    }
  }
  setTimeout(() => {
    const sampler = wanted() ? samplerOf(of) : undefined;
    if (sampler !== undefined) go(new Samples(sampler, tell));
  });
}

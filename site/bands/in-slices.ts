import { bandSampler, Refusal } from "@rollbook/lib";
import type { BandsOf, BandsSoFar } from "./ask.js";

const most = 500;
const first = { count: 40, within: 1200, least: 10 }; // samples, ms, samples when time is up

/** Samples that are told after so many: each time half as many again, so that a reader is not kept busy. */
const nextAfter = (count: number): number =>
  count >= most ? Number.POSITIVE_INFINITY : Math.min(most, Math.max(first.count, 1.5 * count));

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
  const started = performance.now();
  let next = first.count;
  let sampler: ReturnType<typeof bandSampler>;
  let under: Iterator<void, void> | undefined;

  function isDue(): boolean {
    if (sampler.count % 2 === 1 || sampler.count === 0) return false; // they come in opposite pairs
    const early = next === first.count && performance.now() - started > first.within;
    return sampler.count >= (early ? first.least : next);
  }
  function tellSoFar(): void {
    const { count } = sampler;
    next = nextAfter(count);
    tell({ count, of: most, margins: sampler.margins(), changes: sampler.changes() });
  }
  /** A part of one sample; false where all are there. */
  function step(): boolean {
    under ??= sampler.takeOne();
    if (!under.next().done) return true;
    under = undefined;
    const taken = sampler.count + sampler.lost;
    if (isDue() || (taken === most && sampler.count > 0)) tellSoFar();
    return taken < most;
  }
  function go(): void {
    const end = performance.now() + slice;
    while (wanted()) {
      if (!step()) return;
      if (performance.now() >= end) {
        setTimeout(go);
        return;
      }
    }
  }
  setTimeout(() => {
    if (!wanted()) return;
    try {
      sampler = bandSampler(of.car, of.changes, of);
    } catch (error) {
      if (error instanceof Refusal) return;
      throw error;
    }
    go();
  });
}

import type { Car, Change, ChangeBand, MarginBands, SharedDoubts } from "@rollbook/lib";

/** What bands are wanted of. */
export interface BandsOf {
  readonly car: Car;
  /** The car whose file gave the heights. */
  readonly measured: Car;
  /** m/s */
  readonly speed: number;
  readonly changes: readonly Change[];
}

/** Bands from as many samples as there was time for. */
export interface BandsSoFar {
  readonly count: number;
  /** Samples that there will be in the end, less those of cars that cannot stand so. */
  readonly of: number;
  readonly margins: MarginBands;
  /** In the order of the changes asked for. */
  readonly changes: readonly ChangeBand[];
  /** Whose doubts make up the bands. */
  readonly doubts: SharedDoubts;
}

/** What goes to a worker, and what comes back. */
export type Ask = BandsOf & { readonly job: number };
export type Answer = BandsSoFar & { readonly job: number };

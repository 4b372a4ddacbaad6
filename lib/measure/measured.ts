/** A number as it was found, with how far it may be off. */
export interface Measured {
  /** SI */
  readonly value: number;
  /** Standard uncertainty in the same unit, at least 0. */
  readonly spread: number;
}

/** A number that is not in doubt. */
export const exactly = (value: number): Measured => ({ value, spread: 0 });

/**
 * How many spreads reach to each end of what the workbook shows: nine times in ten the truth lies
 * within ± this many, as in all its bands.
 */
export const NINE_IN_TEN = 1.6448536; // the normal distribution's 95 % point – NIST/SEMATECH 2012, 1.3.6.7.1

/** Squares added and the root drawn, as independent doubts add up. */
export const inQuadrature = (...spreads: readonly number[]): number => Math.hypot(...spreads);

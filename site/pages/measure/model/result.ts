import type { Measured, Quantity } from "@rollbook/lib";

/** One number that a measurement gives: called by its key, and shown. */
export interface Found extends Measured {
  readonly key: string;
  readonly quantity: Quantity;
  /** Digits after the point in the metric unit, where nothing is in doubt. */
  readonly decimals: number;
  /** Where it belongs in the car file; nothing where it belongs nowhere. */
  readonly path?: string;
  /** What the model says of the same for the car at hand. */
  readonly predicted?: number;
  /** Whose doubt makes up more than half of its own: a field of the form, or a place of the car. */
  readonly mostly?: string;
}

/** Something to be told beside the numbers, with a number where it has one. */
export interface Remark {
  readonly code: string;
  readonly value?: number;
}

/** What a form gives. */
export type Result =
  | {
      readonly found: readonly Found[];
      readonly remarks: readonly Remark[];
      readonly refused?: undefined;
      readonly missing?: undefined;
    }
  /** A sentence in SI, or the keys of what is not there yet. */
  | { readonly found?: undefined; readonly refused: Error }
  | {
      readonly found?: undefined;
      readonly refused?: undefined;
      readonly missing: readonly string[];
    };

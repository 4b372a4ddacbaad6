import type { Quantity } from "./units.js";

/** Why something was refused, in a word that does not change with its sentence. */
export type RefusalCode =
  | "cannot-be-driven"
  | "cannot-hold-speed"
  | "cannot-stand"
  | "critical-speed"
  | "does-not-suit"
  | "driver-twice"
  | "falls-over"
  | "fixed-by-class"
  | "joints-in-one-plane"
  | "lines-alike"
  | "links-left-then-right"
  | "no-adjuster"
  | "no-bar-rate"
  | "no-best-pressure"
  | "no-crossing"
  | "no-level-equal"
  | "no-rest"
  | "no-roll-centre"
  | "no-samples"
  | "no-straight-braking"
  | "no-turn"
  | "no-turns"
  | "not-a-number"
  | "not-determined"
  | "not-the-same-corners"
  | "not-whole"
  | "nothing-felt"
  | "out-of-range"
  | "road-needed"
  | "settles-to-zero"
  | "too-few-samples"
  | "travel-out-of-reach"
  | "two-wheels-needed"
  | "unknown-tyre"
  | "wheel-in-the-air"
  | "wheel-needed"
  | "wheel-turned-over";

/** The number that was refused, where it was one. */
export interface RefusedNumber {
  /** in words, as in the sentence */
  readonly field: string;
  readonly value: unknown;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
  /** What it measures, where that is known: value and range are then SI. */
  readonly quantity?: Quantity;
}

/**
 * What the library says instead of an answer when it is asked for something that it cannot give.
 *
 * Nothing else may be caught and shown to a reader: any other error is a fault of the program.
 */
export class Refusal extends RangeError {
  readonly code: RefusalCode;
  readonly number: RefusedNumber | undefined;

  constructor(code: RefusalCode, sentence: string, number?: RefusedNumber) {
    super(sentence);
    this.name = "Refusal";
    this.code = code;
    this.number = number;
  }
}

/** What comes of some work, or nothing where it is refused; a fault of the program goes on. */
export function orUndefined<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

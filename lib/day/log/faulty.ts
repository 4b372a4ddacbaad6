import { emptyLog, type Log } from "./log.js";

/**
 * What is wrong with a file, one sentence for each fault, and the log of what in it is sound, for a
 * reader who wants to keep that.
 */
export interface Faulty {
  readonly log?: undefined;
  /** The first hundred. */
  readonly faults: readonly string[];
  /** How many there are. */
  readonly faultCount: number;
  readonly sound: Log;
}

/** A file of which nothing is taken. */
export const refused = (faults: readonly string[]): Faulty => ({
  ...{ faults: faults.slice(0, MOST_KEPT), faultCount: faults.length },
  sound: emptyLog,
});

const MOST_KEPT = 100;

/** Faults as they are found: the first hundred in words, the others counted. */
export class FaultList {
  readonly #faults: string[] = [];
  #count = 0;

  get count(): number {
    return this.#count;
  }
  /** @param where - goes before each sentence */
  add(where: string, faults: readonly string[]): void {
    this.#count += faults.length;
    for (const fault of faults.slice(0, MOST_KEPT - this.#faults.length))
      this.#faults.push(where + fault);
  }
  faulty(sound: Log): Faulty {
    return { faults: this.#faults, faultCount: this.#count, sound };
  }
}

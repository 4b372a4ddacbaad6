import { ownWorker } from "@rollbook/page";
import type { Answer, Ask, BandsOf, BandsSoFar } from "./ask.js";
import { sampleInSlices } from "./in-slices.js";

export type { BandsOf, BandsSoFar } from "./ask.js";

const slice = 12; // ms of work between two chances for the page to answer

/** Works out how sure figures are while the page is read, one car at a time. */
export interface Bands {
  /** Begins, and tells again and again from more samples; whatever was under way is dropped. */
  begin(of: BandsOf, tell: (bands: BandsSoFar) => void): void;
  drop(): void;
}

/** Bands from a worker, or on the page itself where a browser starts none: from a file. */
export const bandsBeside = (): Bands => new WorkedBands();

interface Wanted {
  readonly of: BandsOf;
  readonly tell: (bands: BandsSoFar) => void;
}

class WorkedBands implements Bands {
  #job = 0;
  #worker: Worker | undefined;
  #noWorkers = location.protocol === "file:";
  #wanted: Wanted | undefined;

  begin(of: BandsOf, tell: (bands: BandsSoFar) => void): void {
    const mine = ++this.#job;
    this.#wanted = { of, tell };
    this.#worker ??= this.#start();
    const ask: Ask = { job: mine, ...of };
    if (this.#worker) this.#worker.postMessage(ask);
    else sampleInSlices(of, slice, () => this.#job === mine, tell);
  }

  drop(): void {
    this.#job += 1;
    this.#wanted = undefined;
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #start(): Worker | undefined {
    if (this.#noWorkers) return undefined;
    try {
      const worker = ownWorker("bands-worker.js");
      worker.onmessage = ({ data }: MessageEvent<Answer>) => {
        if (data.job === this.#job) this.#wanted?.tell(data);
      };
      worker.onerror = (event) => {
        event.preventDefault();
        [this.#noWorkers, this.#worker] = [true, undefined];
        if (this.#wanted) this.begin(this.#wanted.of, this.#wanted.tell); // again, on the page itself
      };
      return worker;
    } catch {
      this.#noWorkers = true;
      return undefined;
    }
  }
}

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

/**
 * Bands from a worker, or on the page itself where a browser starts none: from a file.
 *
 * @param file - the worker's script, beside the page
 */
export function bandsFrom(file: string): Bands {
  let job = 0;
  let worker: Worker | undefined;
  let noWorkers = location.protocol === "file:";
  let wanted: { of: BandsOf; tell: (bands: BandsSoFar) => void } | undefined;

  function start(): Worker | undefined {
    if (noWorkers) return undefined;
    try {
      const started = ownWorker(file);
      started.onmessage = ({ data }: MessageEvent<Answer>) => {
        if (data.job === job) wanted?.tell(data);
      };
      started.onerror = (event) => {
        event.preventDefault();
        [noWorkers, worker] = [true, undefined];
        if (wanted) begin(wanted.of, wanted.tell); // again, on the page itself
      };
      return started;
    } catch {
      noWorkers = true;
      return undefined;
    }
  }
  function begin(of: BandsOf, tell: (bands: BandsSoFar) => void): void {
    const mine = ++job;
    wanted = { of, tell };
    worker ??= start();
    const ask: Ask = { job, ...of };
    if (worker) worker.postMessage(ask);
    else sampleInSlices(of, slice, () => job === mine, tell);
  }
  return {
    begin,
    drop() {
      job += 1;
      wanted = undefined;
      worker?.terminate();
      worker = undefined;
    },
  };
}

import { ownWorker } from "@rollbook/page";
import type { Job } from "./job.js";
import type { RowAnswer, RowAsk } from "./row-ask.js";

const most = 4;

/** Workers that take rows of a job until none is left. */
export interface Crew {
  /** @param free - how many workers stay out of it, while one at least goes in */
  work(job: Job, free?: number): void;
  rest(): void;
}

/**
 * Starts workers from a file beside the page.
 *
 * @param onFailed - told once when one of them cannot go on; the crew is then gone
 * @returns nothing where the page is a file itself: browsers start no worker from there
 */
export function startCrew(file: string, onFailed: () => void): Crew | undefined {
  if (location.protocol === "file:") return undefined;
  const workers: Worker[] = [];
  const idle = new Set<Worker>();
  let [job, hands]: [Job | undefined, number] = [undefined, most];

  function hand(worker: Worker): void {
    idle.add(worker);
    const row = workers.length - idle.size < hands ? job?.take() : undefined;
    if (job === undefined || row === undefined) return;
    idle.delete(worker);
    const ask: RowAsk = { job: job.number, of: job.of, grid: job.grid, row };
    worker.postMessage(ask);
  }
  function fail(): void {
    if (workers.length === 0) return;
    for (const worker of workers.splice(0)) worker.terminate();
    onFailed();
  }
  function start(): void {
    const worker = ownWorker(file);
    worker.onmessage = ({ data }: MessageEvent<RowAnswer>) => {
      if (job?.number === data.job) job.put(data.row, data.worked);
      hand(worker);
    };
    worker.onerror = (event) => {
      event.preventDefault();
      fail();
    };
    workers.push(worker);
    idle.add(worker);
  }
  const count = Math.min(most, Math.max(1, navigator.hardwareConcurrency || 1));
  try {
    for (let i = 0; i < count; i++) start();
  } catch {
    for (const worker of workers) worker.terminate();
    return undefined;
  }
  return {
    work(next, free = 0) {
      job = next;
      hands = Math.max(1, workers.length - free);
      for (const worker of [...idle]) hand(worker);
    },
    rest() {
      job = undefined;
    },
  };
}

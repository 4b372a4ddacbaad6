import { ownWorker } from "@rollbook/page";
import type { Job } from "./job.js";
import type { RowAnswer, RowAsk } from "./row-ask.js";

const most = 4;

/** Workers that take rows of a job until none is left. */
interface Crew {
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
  const count = Math.min(most, Math.max(1, navigator.hardwareConcurrency || 1));
  const workers: Worker[] = [];
  try {
    for (let i = 0; i < count; i++) workers.push(ownWorker(file));
  } catch {
    for (const worker of workers) worker.terminate();
    return undefined;
  }
  return new RowCrew(workers, onFailed);
}

class RowCrew implements Crew {
  readonly #workers: Worker[];
  readonly #idle: Set<Worker>;
  readonly #onFailed: () => void;
  #job: Job | undefined;
  #hands = most;

  constructor(workers: Worker[], onFailed: () => void) {
    this.#workers = workers;
    this.#idle = new Set(workers);
    this.#onFailed = onFailed;
    for (const worker of workers) {
      worker.onmessage = ({ data }: MessageEvent<RowAnswer>) => {
        if (this.#job?.number === data.job) this.#job.put(data.row, data.worked);
        this.#hand(worker);
      };
      worker.onerror = (event) => {
        event.preventDefault();
        this.#fail();
      };
    }
  }

  work(job: Job, free = 0): void {
    this.#job = job;
    this.#hands = Math.max(1, this.#workers.length - free);
    for (const worker of [...this.#idle]) this.#hand(worker);
  }

  rest(): void {
    this.#job = undefined;
  }

  #hand(worker: Worker): void {
    const job = this.#job;
    this.#idle.add(worker);
    const row = this.#workers.length - this.#idle.size < this.#hands ? job?.take() : undefined;
    if (job === undefined || row === undefined) return;
    this.#idle.delete(worker);
    const ask: RowAsk = { job: job.number, of: job.of, grid: job.grid, row };
    worker.postMessage(ask);
  }

  #fail(): void {
    if (this.#workers.length === 0) return;
    for (const worker of this.#workers.splice(0)) worker.terminate();
    this.#onFailed();
  }
}

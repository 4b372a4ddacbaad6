import { exactCells } from "@rollbook/lib";
import type { Job } from "./job.js";

const slice = 12; // ms of work between two chances for the page to answer

const later = (work: () => void): void => {
  if (typeof requestIdleCallback === "function") requestIdleCallback(work, { timeout: 100 });
  else setTimeout(work);
};

/** Works a job out on the page itself, in slices, for as long as it is wanted. */
export function workInSlices(job: Job, wanted: () => boolean): void {
  let row: number | undefined;
  let cells: ReturnType<typeof exactCells> | undefined;

  /** One place; false where all are there. */
  function step(): boolean {
    if (cells === undefined) {
      row = job.take();
      if (row === undefined) return false;
      cells = exactCells(job.of, job.grid, row);
    }
    const { done, value } = cells.next();
    if (done && row !== undefined) {
      cells = undefined;
      job.put(row, value);
    }
    return true;
  }
  function go(): void {
    const end = performance.now() + slice;
    while (wanted()) {
      if (!step()) return;
      if (performance.now() >= end) {
        later(go);
        return;
      }
    }
  }
  later(go);
}

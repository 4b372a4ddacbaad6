import type { ChildProcess } from "node:child_process";
import { availableParallelism } from "node:os";
import { CourseError, codeCells, type Notebook } from "../build/notebook.js";
import { escapeHtml } from "../cells/escape.js";
import type { MadeFor } from "../cells/made-for.js";
import { words } from "../cells/words.js";
import { cellFailure, isRefused, reason } from "./failure.js";
import { secondsOfChapters } from "./seconds.js";
import { kernelStarter } from "./start.js";
import type { CellResult } from "./tslab.js";
import type { Answer, Job } from "./worker.js";

/** HTML that each code cell displayed, by cell id. */
export type Outputs = Readonly<Record<string, readonly string[]>>;

export type Progress = (notebook: Notebook, done: number, total: number) => void;

/** How notebooks are run. */
export interface Running {
  readonly progress: Progress;
  /** For whom the cells work; the workbook's own car where left out. */
  readonly madeFor?: MadeFor | undefined;
  /** The strict compiler took all cells of each notebook: no cell's types are checked again. */
  readonly typesChecked?: boolean;
}

/** What a cell shows that the car of a file does not give enough for. */
const notForThisCar = (car: string, stderr: string): string =>
  `<p class="worked">${escapeHtml(words.notForThisCar(car, reason(stderr)))}</p>`;

function outputsOf(notebook: Notebook, results: readonly CellResult[], madeFor?: MadeFor): Outputs {
  const outputs: Record<string, readonly string[]> = {};
  let refused = "";
  codeCells(notebook).forEach((cell, index) => {
    const result = results[index];
    if (!result) return;
    if (result.ok) outputs[cell.id] = result.html;
    else {
      refused ||= isRefused(result) ? result.stderr : "";
      if (!madeFor?.car || refused === "") throw cellFailure(notebook, cell, result);
      outputs[cell.id] = [notForThisCar(madeFor.car.name, refused)];
    }
  });
  return outputs;
}

function runOne(
  worker: ChildProcess,
  notebook: Notebook,
  { progress, madeFor }: Running,
): Promise<Outputs> {
  const cells = codeCells(notebook);
  return new Promise((resolve, reject) => {
    const gone = (code: number | null) =>
      reject(new CourseError(`${notebook.name}: the kernel ended with code ${code}`));
    const listen = (answer: Answer) => {
      if (answer.kind === "cell") progress(notebook, answer.done, cells.length);
      if (answer.kind !== "done") return;
      worker.off("message", listen);
      worker.off("exit", gone);
      try {
        resolve(outputsOf(notebook, answer.results, madeFor));
      } catch (error) {
        reject(error);
      }
    };
    worker.on("message", listen);
    worker.on("exit", gone);
    worker.send({ name: notebook.name, cells, ...(madeFor && { madeFor }) } satisfies Job);
  });
}

/** Notebooks in the order in which they are best begun: what takes long first, where that is known. */
function longestFirst(
  notebooks: readonly Notebook[],
  seconds: Readonly<Record<string, number>>,
): Notebook[] {
  const byCells = (notebook: Notebook) => codeCells(notebook).length / 30;
  const cost = (notebook: Notebook) => seconds[notebook.name] ?? byCells(notebook);
  return [...notebooks].sort((a, b) => cost(b) - cost(a));
}

/** Runs notebooks in tslab kernels, as many at a time as there are cores; the first failure stops all. */
export async function runNotebooks(
  notebooks: readonly Notebook[],
  directory: string,
  running: Running,
): Promise<Map<string, Outputs>> {
  const { typesChecked = false } = running;
  const seconds = secondsOfChapters();
  const queue = longestFirst(notebooks, seconds.known);
  const start = await kernelStarter(directory, typesChecked);
  const workers = Array.from({ length: Math.min(queue.length, availableParallelism()) }, start);
  const done = new Map<string, Outputs>();
  try {
    await Promise.all(
      workers.map(async (worker) => {
        for (let next = queue.shift(); next; next = queue.shift()) {
          const began = performance.now();
          done.set(next.name, await runOne(worker, next, running));
          seconds.took(next.name, (performance.now() - began) / 1000);
        }
      }),
    );
  } finally {
    for (const worker of workers) worker.kill();
  }
  seconds.keep();
  return done;
}

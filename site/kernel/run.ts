import { type ChildProcess, fork } from "node:child_process";
import { createRequire } from "node:module";
import { availableParallelism } from "node:os";
import { fileURLToPath, pathToFileURL } from "node:url";
import { CourseError, codeCells, type Notebook } from "../build/notebook.js";
import { escapeHtml } from "../cells/escape.js";
import type { MadeFor } from "../cells/made-for.js";
import { words } from "../cells/words.js";
import { cellFailure, isRefused, reason } from "./failure.js";
import type { CellResult } from "./tslab.js";
import type { Answer, Job } from "./worker.js";

/** HTML that each code cell displayed, by cell id. */
export type Outputs = Readonly<Record<string, readonly string[]>>;

export type Progress = (notebook: Notebook, done: number, total: number) => void;

const typescriptLoader = pathToFileURL(createRequire(import.meta.url).resolve("tsx")).href;
const workerPath = fileURLToPath(new URL("worker.ts", import.meta.url));

const startWorker = (directory: string): ChildProcess =>
  fork(workerPath, { cwd: directory, execArgv: ["--import", typescriptLoader] });

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
  progress: Progress,
  madeFor?: MadeFor,
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

/** Runs notebooks in tslab kernels, as many at a time as there are cores; the first failure stops all. */
export async function runNotebooks(
  notebooks: readonly Notebook[],
  directory: string,
  progress: Progress,
  madeFor?: MadeFor,
): Promise<Map<string, Outputs>> {
  const queue = [...notebooks].sort((a, b) => codeCells(b).length - codeCells(a).length);
  const workers = Array.from({ length: Math.min(queue.length, availableParallelism()) }, () =>
    startWorker(directory),
  );
  const done = new Map<string, Outputs>();
  try {
    await Promise.all(
      workers.map(async (worker) => {
        for (let next = queue.shift(); next; next = queue.shift()) {
          done.set(next.name, await runOne(worker, next, progress, madeFor));
        }
      }),
    );
  } finally {
    for (const worker of workers) worker.kill();
  }
  return done;
}

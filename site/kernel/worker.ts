/** A child process with one kernel: takes a notebook's code cells, answers with their results. */
import type { Cell } from "../build/notebook.js";
import { type CellResult, startKernel } from "./tslab.js";

export interface Job {
  readonly name: string;
  readonly cells: readonly Cell[];
}

export type Answer =
  | { readonly kind: "ready" }
  | { readonly kind: "cell"; readonly name: string; readonly done: number }
  | { readonly kind: "done"; readonly name: string; readonly results: readonly CellResult[] };

const kernel = startKernel();
const answer = (message: Answer) => process.send?.(message);

process.on("message", async ({ name, cells }: Job) => {
  kernel.reset();
  const results: CellResult[] = [];
  for (const cell of cells) {
    const result = await kernel.run(cell.source);
    results.push(result);
    answer({ kind: "cell", name, done: results.length });
    if (!result.ok) break;
  }
  answer({ kind: "done", name, results });
});
process.on("disconnect", () => process.exit());
answer({ kind: "ready" });

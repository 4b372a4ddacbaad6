/** A child process with one kernel: takes a notebook's code cells, answers with their results. */
import type { Cell } from "../build/notebook.js";
import type { MadeFor } from "../cells/made-for.js";
import { type CellResult, startKernel } from "./tslab.js";

export interface Job {
  readonly name: string;
  readonly cells: readonly Cell[];
  /** For whom the cells work; the workbook's own car where left out. */
  readonly madeFor?: MadeFor;
}

export type Answer =
  | { readonly kind: "ready" }
  | { readonly kind: "cell"; readonly name: string; readonly done: number }
  | { readonly kind: "done"; readonly name: string; readonly results: readonly CellResult[] };

const kernel = startKernel(process.argv.includes("--types-checked"));
const answer = (message: Answer) => process.send?.(message);

/** A cell that lets those after it work for somebody else's car and units. */
const workingFor = (madeFor: MadeFor): string =>
  `import { workFor } from "@rollbook/cells"; workFor(${JSON.stringify(madeFor)} as never);`;

process.on("message", async ({ name, cells, madeFor }: Job) => {
  kernel.reset();
  if (madeFor) await kernel.run(workingFor(madeFor));
  const results: CellResult[] = [];
  for (const cell of cells) {
    const result = await kernel.run(cell.source);
    results.push(result);
    answer({ kind: "cell", name, done: results.length });
    if (!result.ok && !madeFor) break;
  }
  answer({ kind: "done", name, results });
});
process.on("disconnect", () => process.exit());
answer({ kind: "ready" });

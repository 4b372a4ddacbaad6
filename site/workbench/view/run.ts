import { element, reader } from "@rollbook/page";
import { outputFrom, type Reply } from "../model/results.js";
import { type RunScript, runScript, UnreadableCell } from "../model/script.js";
import { endingTold, faultTold, type Told, unreadableTold } from "../model/told.js";
import { runtime } from "../sandbox/built.js";
import { Ended, openSandbox, patience, type Sandbox } from "../sandbox/sandbox.js";
import { words } from "../words.js";
import type { CellView } from "./cell.js";
import { shownOutput } from "./output.js";

type Ran = Extract<Reply, { kind: "ran" }>;

/** Runs the cells as they stand, and shows what comes of them under each. */
export function runner(cells: readonly CellView[], tell: (sentence: string) => void) {
  const ids = cells.map(({ id }) => id);
  let sandbox: Sandbox | undefined;

  function show({ sentence, cell, line }: Told): void {
    tell(sentence);
    if (cell !== undefined) cells[cell]?.tell(sentence, line);
  }
  function stop(ending: Ended, script: RunScript, cell?: number): string {
    for (const { results } of cells) {
      for (const controls of results.querySelectorAll("fieldset")) controls.disabled = true;
    }
    const told = endingTold(ids, ending.ending, script, patience / 1000, cell);
    if (ending.ending.why !== "left") show(told);
    return told.sentence;
  }

  async function draw(
    own: Sandbox,
    script: RunScript,
    index: number,
    cell: number,
    values: object,
  ) {
    try {
      const reply = await own.ask({ kind: "draw", index, values: { ...values } });
      return reply.kind === "failed" ? faultTold(ids, reply.fault, script).sentence : reply;
    } catch (ending) {
      return stop(ending as Ended, script, cell);
    }
  }
  function place(own: Sandbox, script: RunScript, { outputs }: Ran): void {
    for (const { results } of cells) results.replaceChildren();
    outputs.forEach(({ cell, output: given }, index) => {
      const output = outputFrom(given);
      const shown =
        typeof output === "string"
          ? element("p", { class: "fault" }, words.cannotShow(output))
          : shownOutput(`result-${index}`, output, (values) =>
              draw(own, script, index, cell, values),
            );
      cells[cell]?.results.append(shown);
    });
  }
  function scriptOfCells(): RunScript | undefined {
    try {
      return runScript(
        runtime,
        cells.map(({ id, editor }) => ({ id, source: editor.text() })),
      );
    } catch (fault) {
      if (!(fault instanceof UnreadableCell)) throw fault;
      show(unreadableTold(ids, fault));
      return undefined;
    }
  }

  return async function run(): Promise<void> {
    sandbox?.end();
    for (const cell of cells) cell.tell();
    tell(words.running);
    const script = scriptOfCells();
    if (!script) return;
    const started = performance.now();
    const own = openSandbox(script.text, cells.length);
    sandbox = own;
    try {
      const { car, units } = reader;
      const reply = await own.ask({ kind: "run", car, units });
      if (reply.kind !== "ran") return;
      place(own, script, reply);
      const seconds = ((performance.now() - started) / 1000).toFixed(1);
      if (reply.fault) show(faultTold(ids, reply.fault, script));
      else tell(words.ran(reply.outputs.length, seconds));
    } catch (ending) {
      if (!(ending instanceof Ended)) throw ending;
      if (sandbox === own) stop(ending, script);
    }
  };
}

import { element, reader } from "@rollbook/page";
import { outputFrom, type Reply } from "../model/results.js";
import { type RunScript, runScript, UnreadableCell } from "../model/script.js";
import { endingTold, faultTold, type Told, unreadableTold } from "../model/told.js";
import { runtime } from "../sandbox/built.js";
import type { Question } from "../sandbox/runtime.js";
import { Ended, type Ending, openSandbox, patience, type Sandbox } from "../sandbox/sandbox.js";
import { words } from "../words.js";
import type { CellView } from "./cell.js";
import { shownOutput } from "./output.js";

type Ran = Extract<Reply, { kind: "ran" }>;
type Values = Readonly<Record<string, number>>;

/** Runs the cells as they stand, and shows what comes of them under each. */
export function runner(cells: readonly CellView[], tell: (sentence: string) => void) {
  const ids = cells.map(({ id }) => id);
  let sandbox: Sandbox | undefined;

  function show({ sentence, cell, line }: Told): void {
    tell(sentence);
    if (cell !== undefined) cells[cell]?.tell(sentence, line);
  }
  function stopped(ending: Ending, script: RunScript): void {
    for (const { results } of cells) {
      for (const controls of results.querySelectorAll("fieldset")) controls.disabled = true;
    }
    if (ending.why !== "left") show(endingTold(ids, ending, script, patience / 1000));
  }

  function scriptOfCells(): RunScript | undefined {
    const present = cells.map(({ id, editor }) => ({ id, source: editor.text() }));
    try {
      return runScript(runtime, present);
    } catch (fault) {
      if (!(fault instanceof UnreadableCell)) throw fault;
      show(unreadableTold(ids, fault));
      return undefined;
    }
  }
  /** The answer; undefined where the sandbox was taken away meanwhile, which is told elsewhere. */
  async function answer(from: Sandbox, question: Question): Promise<Reply | undefined> {
    try {
      return await from.ask(question);
    } catch (ending) {
      if (ending instanceof Ended) return undefined;
      throw ending;
    }
  }
  function place({ outputs }: Ran, from: Sandbox, script: RunScript): void {
    for (const { results } of cells) results.replaceChildren();
    outputs.forEach(({ cell, output: given }, index) => {
      const draw = async (values: Values) => {
        const reply = await answer(from, { kind: "draw", cell, index, values });
        if (reply?.kind === "failed") return faultTold(ids, reply.fault, script).sentence;
        return reply ?? words.stopped;
      };
      const output = outputFrom(given);
      const shown =
        typeof output === "string"
          ? element("p", { class: "fault" }, words.cannotShow(output))
          : shownOutput(`result-${index}`, output, draw);
      cells[cell]?.results.append(shown);
    });
  }

  return async function run(): Promise<void> {
    sandbox?.end();
    for (const cell of cells) cell.tell();
    tell(words.running);
    const script = scriptOfCells();
    if (!script) return;
    const started = performance.now();
    const own = openSandbox(script.text, cells.length, (ending) => stopped(ending, script));
    sandbox = own;
    const { car, units } = reader;
    const reply = await answer(own, { kind: "run", car, units });
    if (reply?.kind !== "ran") return;
    place(reply, own, script);
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    if (reply.fault) show(faultTold(ids, reply.fault, script));
    else tell(words.ran(reply.outputs.length, seconds));
  };
}

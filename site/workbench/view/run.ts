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

/** The answer; undefined where the sandbox was taken away meanwhile, which is told elsewhere. */
async function answer(from: Sandbox, question: Question): Promise<Reply | undefined> {
  try {
    return await from.ask(question);
  } catch (ending) {
    if (ending instanceof Ended) return undefined;
    throw ending;
  }
}

class Runner {
  readonly #ids: readonly string[];
  #script: RunScript | undefined;
  /** The sandbox of that script, or nothing while the cells rest. */
  #sandbox: Sandbox | undefined;
  #waking: Promise<Sandbox> | undefined;

  constructor(
    private readonly cells: readonly CellView[],
    private readonly tell: (sentence: string) => void,
  ) {
    this.#ids = cells.map(({ id }) => id);
  }
  async run(): Promise<void> {
    this.#sandbox?.end();
    for (const cell of this.cells) cell.tell();
    this.tell(words.running);
    const script = this.#scriptOfCells();
    this.#script = script;
    if (!script) return;
    const started = performance.now();
    const reply = await this.#ran(this.#open(script));
    if (!reply) return;
    this.#place(reply, script);
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    if (reply.fault) this.#show(faultTold(this.#ids, reply.fault, script));
    else this.tell(words.ran(reply.outputs.length, seconds));
  }
  #open(script: RunScript): Sandbox {
    const whenEnded = (ending: Ending) => this.#stopped(ending, script);
    this.#sandbox = openSandbox(script.text, this.cells.length, whenEnded);
    return this.#sandbox;
  }
  async #ran(sandbox: Sandbox): Promise<Ran | undefined> {
    const { car, units } = reader;
    const reply = await answer(sandbox, { kind: "run", car, units });
    return reply?.kind === "ran" ? reply : undefined;
  }
  /** The sandbox in which a script has run; cells that rest run again. */
  #awake(script: RunScript): Promise<Sandbox> | Sandbox {
    if (this.#sandbox && !this.#waking) return this.#sandbox;
    this.#waking ??= this.#again(script).finally(() => {
      this.#waking = undefined;
    });
    return this.#waking;
  }
  async #again(script: RunScript): Promise<Sandbox> {
    this.tell(words.running);
    const sandbox = this.#open(script);
    if (await this.#ran(sandbox)) this.tell(words.ranAgain);
    return sandbox;
  }
  #show({ sentence, cell, line }: Told): void {
    this.tell(sentence);
    if (cell !== undefined) this.cells[cell]?.tell(sentence, line);
  }
  #stopped(ending: Ending, script: RunScript): void {
    const rests = ending.why === "rested" || ending.why === "hidden";
    if (rests) this.#sandbox = undefined;
    else this.#disable();
    if (ending.why !== "left") this.#show(endingTold(this.#ids, ending, script, patience / 1000));
  }
  #disable(): void {
    for (const { results } of this.cells) {
      for (const controls of results.querySelectorAll("fieldset")) controls.disabled = true;
    }
  }
  #scriptOfCells(): RunScript | undefined {
    const present = this.cells.map(({ id, editor }) => ({ id, source: editor.text() }));
    try {
      return runScript(runtime, present);
    } catch (fault) {
      if (!(fault instanceof UnreadableCell)) throw fault;
      this.#show(unreadableTold(this.#ids, fault));
      return undefined;
    }
  }
  #place({ outputs }: Ran, script: RunScript): void {
    for (const { results } of this.cells) results.replaceChildren();
    outputs.forEach(({ cell, output: given }, index) => {
      const draw = async (values: Values) => {
        if (this.#script !== script) return words.stopped;
        const reply = await answer(await this.#awake(script), {
          kind: "draw",
          cell,
          index,
          values,
        });
        if (reply?.kind === "failed") return faultTold(this.#ids, reply.fault, script).sentence;
        return reply ?? words.stopped;
      };
      const output = outputFrom(given);
      const shown =
        typeof output === "string"
          ? element("p", { class: "fault" }, words.cannotShow(output))
          : shownOutput(`result-${index}`, output, draw);
      this.cells[cell]?.results.append(shown);
    });
  }
}

/** Runs the cells as they stand, and shows what comes of them under each. */
export function runner(cells: readonly CellView[], tell: (sentence: string) => void) {
  const one = new Runner(cells, tell);
  return (): Promise<void> => one.run();
}

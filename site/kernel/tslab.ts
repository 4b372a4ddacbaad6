/**
 * The only file that knows tslab's private modules, pinned to the version in package.json: it runs
 * cells in this process as tslab's own kernel would, without a socket between.
 */
import { createRequire } from "node:module";
import { type Ts, withOneProgram } from "./one-program.js";

const require = createRequire(import.meta.url);
const ofTslab = createRequire(require.resolve("tslab/package.json"));

/** tslab's modules, with a compiler that makes no more of a cell than is needed. */
function modules(typesChecked: boolean) {
  const path = ofTslab.resolve("@tslab/typescript-for-tslab");
  const compiler: Ts = ofTslab(path);
  const loaded = require.cache[path];
  if (loaded) loaded.exports = withOneProgram(compiler, typesChecked);
  return {
    ...{ createConverter: require("tslab/dist/converter").createConverter },
    ...{ createExecutor: require("tslab/dist/executor").createExecutor },
    ...{ jupyter: require("tslab/dist/jupyter") },
  };
}

interface Converted {
  readonly output?: string;
}

interface Converter {
  convert(declared: string, source: string): Converted;
}

export interface CellResult {
  readonly ok: boolean;
  /** What the cell displayed, as HTML. */
  readonly html: readonly string[];
  readonly stdout: string;
  readonly stderr: string;
  /** The JavaScript that ran, to find a failing line by. */
  readonly ran: string;
}

const describe = (value: unknown): string =>
  value instanceof Error ? (value.stack ?? "") : String(value);

/** What a cell has written so far. */
class Written {
  html: string[] = [];
  stdout = "";
  stderr = "";

  /** What a cell logs, as tslab hands it on. */
  readonly console = {
    log: (...values: unknown[]) => {
      this.stdout += `${values.map(describe).join(" ")}\n`;
    },
    error: (format: string, ...values: unknown[]) => {
      const text = describe(format).replace(/%[sd]/g, () => String(values.shift()));
      this.stderr += `${text}\n`;
    },
  };
  begin(): void {
    this.html = [];
    this.stdout = "";
    this.stderr = "";
  }
  display({ data }: { data: Record<string, string> }): void {
    this.html.push(data["text/html"] ?? data["image/svg+xml"] ?? data["text/plain"] ?? "");
  }
  fail(reason: unknown): void {
    this.stderr += `${describe(reason)}\n`;
  }
  /** Takes what the process itself writes while the work lasts. */
  async during<Result>(work: () => Promise<Result>): Promise<Result> {
    const write = { out: process.stdout.write, err: process.stderr.write };
    process.stdout.write = (chunk: string | Uint8Array) => {
      this.stdout += chunk;
      return true;
    };
    process.stderr.write = (chunk: string | Uint8Array) => {
      this.stderr += chunk;
      return true;
    };
    try {
      return await work();
    } finally {
      process.stdout.write = write.out;
      process.stderr.write = write.err;
    }
  }
}

/** A converter that remembers the JavaScript that ran last. */
function rememberingConverter(createConverter: () => Converter) {
  const converter = createConverter();
  const memory = { ran: "" };
  const convert = (declared: string, source: string): Converted => {
    const converted = converter.convert(declared, source);
    memory.ran = converted.output ?? "";
    return converted;
  };
  return { node: { ...converter, convert }, memory };
}

/**
 * A kernel whose working directory is this process's; the first of a process sets how its cells are looked at.
 *
 * @param typesChecked - the strict compiler took all cells of each notebook, so that no cell's types are checked again
 */
export function startKernel(typesChecked: boolean) {
  const { createConverter, createExecutor, jupyter } = modules(typesChecked);
  const { node, memory } = rememberingConverter(createConverter);
  const written = new Written();
  const executor = createExecutor(process.cwd(), { node }, written.console);
  jupyter.lastWriteDisplayData = (shown: { data: Record<string, string> }) =>
    written.display(shown);
  process.on("unhandledRejection", (reason) => written.fail(reason));
  process.on("uncaughtException", (error) => written.fail(error));

  /** Runs one cell and waits for what it left pending in this turn; any error text fails it. */
  const run = (source: string): Promise<CellResult> =>
    written.during(async () => {
      written.begin();
      const done: boolean = await executor.execute(source);
      await new Promise((resolve) => setTimeout(resolve, 0));
      const { html, stdout, stderr } = written;
      return { ok: done && stderr === "", html, stdout, stderr, ran: memory.ran };
    });
  return { run, reset: (): void => executor.reset(), close: (): void => executor.close() };
}

/**
 * The only file that knows tslab's private modules, pinned to the version in package.json: it runs
 * cells in this process as tslab's own kernel would, without a socket between.
 */
import { createRequire } from "node:module";

const require = createRequire(import.meta.url);
const { createConverter } = require("tslab/dist/converter");
const { createExecutor } = require("tslab/dist/executor");
const jupyter = require("tslab/dist/jupyter");

interface Converted {
  readonly output?: string;
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

/** A kernel whose working directory is this process's. */
export function startKernel() {
  const converter = createConverter();
  let ran = "";
  const node = {
    ...converter,
    convert(declared: string, source: string): Converted {
      const converted: Converted = converter.convert(declared, source);
      ran = converted.output ?? "";
      return converted;
    },
  };
  let html: string[] = [];
  let stdout = "";
  let stderr = "";
  const executor = createExecutor(
    process.cwd(),
    { node },
    {
      log: (...values: unknown[]) => {
        stdout += `${values.map(describe).join(" ")}\n`;
      },
      error: (format: string, ...values: unknown[]) => {
        const text = describe(format).replace(/%[sd]/g, () => String(values.shift()));
        stderr += `${text}\n`;
      },
    },
  );
  jupyter.lastWriteDisplayData = ({ data }: { data: Record<string, string> }) => {
    html.push(data["text/html"] ?? data["image/svg+xml"] ?? data["text/plain"] ?? "");
  };
  const late = (reason: unknown) => {
    stderr += `${describe(reason)}\n`;
  };
  process.on("unhandledRejection", late);
  process.on("uncaughtException", late);

  /** Runs one cell and waits for what it left pending in this turn; any error text fails it. */
  async function run(source: string): Promise<CellResult> {
    html = [];
    stdout = "";
    stderr = "";
    const write = { out: process.stdout.write, err: process.stderr.write };
    process.stdout.write = (chunk: string | Uint8Array) => {
      stdout += chunk;
      return true;
    };
    process.stderr.write = (chunk: string | Uint8Array) => {
      stderr += chunk;
      return true;
    };
    try {
      const done: boolean = await executor.execute(source);
      await new Promise((resolve) => setTimeout(resolve, 0));
      return { ok: done && stderr === "", html, stdout, stderr, ran };
    } finally {
      process.stdout.write = write.out;
      process.stderr.write = write.err;
    }
  }
  return { run, reset: (): void => executor.reset(), close: (): void => executor.close() };
}

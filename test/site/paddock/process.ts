import { type ChildProcess, spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type LogEntry, readEntry } from "@rollbook/lib";
import { build } from "esbuild";
import { inRoot } from "../../../site/build/paths.js";
import { EventCutter, type StreamEvent } from "../../../site/pages/workshop/paddock/events.js";

/** A paddock in a process of its own, and where it is. */
export interface Running {
  readonly child: ChildProcess;
  readonly address: string;
  readonly code: string;
  readonly secret: string;
}

/** Starts paddocks that can be killed, all from one script. */
export class Paddocks {
  readonly #script: string;
  readonly #children: ChildProcess[] = [];

  private constructor(script: string) {
    this.#script = script;
  }

  static async in(folder: string): Promise<Paddocks> {
    const script = join(folder, "paddock.cjs");
    await build({
      ...{ entryPoints: [inRoot("test/site/paddock/child.ts")], outfile: script, bundle: true },
      ...{ platform: "node", format: "cjs", logLevel: "silent" },
      alias: { "@rollbook/lib": inRoot("lib/index.ts") },
    });
    return new Paddocks(script);
  }

  start(day: string, course: string, port = 0): Promise<Running> {
    const child = spawn(process.execPath, [this.#script, day, course, String(port)]);
    this.#children.push(child);
    return new Promise((resolve, reject) => {
      child.once("exit", (code) => reject(new Error(`it ended with ${code}`)));
      child.stderr?.on("data", (text) => reject(new Error(String(text))));
      child.stdout?.once("data", (text) => resolve({ child, ...JSON.parse(String(text)) }));
    });
  }

  killAll(): void {
    for (const child of this.#children) child.kill("SIGKILL");
  }
}

/** Kills it as a power cut would, and waits until it is gone. */
export async function killed({ child }: Running): Promise<void> {
  const gone = new Promise((resolve) => child.once("exit", resolve));
  child.kill("SIGKILL");
  await gone;
}

/** What a machine of the paddock answers to a message. */
export async function post(address: string, path: string, token: string, body: object) {
  const response = await fetch(`${address}/paddock/${path}`, {
    method: "POST",
    headers: { "Content-Type": "application/json", Authorization: `Bearer ${token}` },
    body: JSON.stringify(body),
  });
  return { status: response.status, fields: (await response.json()) as Record<string, unknown> };
}

/** What the file of a day holds, entry by entry. */
export const onDisk = (day: string): LogEntry[] =>
  readFileSync(join(day, "day.jsonl"), "utf8")
    .split("\n")
    .slice(0, -1)
    .flatMap((line) => readEntry(JSON.parse(line).entry).entry ?? []);

/** Listens to a stream, for as long as a test wants. */
export async function listen(address: string, token: string) {
  const stop = new AbortController();
  const headers = { Authorization: `Bearer ${token}` };
  const response = await fetch(`${address}/paddock/entries?after=0`, {
    headers,
    signal: stop.signal,
  });
  const pieces = response.body?.pipeThrough(new TextDecoderStream()).getReader();
  const cutter = new EventCutter();
  const heard: StreamEvent[] = [];
  return {
    heard,
    stop: () => stop.abort(),
    entries: (): LogEntry[] =>
      heard.flatMap(({ data }) => (data as { entries?: LogEntry[] }).entries ?? []),
    until: async (is: (event: StreamEvent) => boolean) => {
      for (;;) {
        const found = heard.find(is);
        if (found !== undefined) return found;
        const { done = true, value = "" } = (await pieces?.read()) ?? {};
        if (done) throw new Error("the stream has ended");
        heard.push(...cutter.take(value));
      }
    },
  };
}

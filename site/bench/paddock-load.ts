import { mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { LogEntry } from "@rollbook/lib";
import { inRoot } from "../build/paths.js";
import { startPaddock } from "../paddock/start.js";
import { quantile, type Row } from "./row.js";

const PHONES = 60;
const MINUTES = 60;
const BURSTS = 3;

/** A report of a phone, with the run that it is about. */
function entriesOf(phone: number, number: number): LogEntry[] {
  const name = `p${String(phone).padStart(3, "0")}load`;
  const head = { at: "2031-05-10T09:00:00.000Z", author: `Driver ${phone}` };
  const run = `${name}-${2 * number + 1}`;
  return [
    { ...head, kind: "run", id: run, setUp: "run-1", driver: head.author, runNumber: 1 },
    {
      ...{ ...head, kind: "report", id: `${name}-${2 * number + 2}`, run },
      report: { corner: "Crest", phase: "middle", input: "steady", balance: 1 },
    },
  ];
}

/**
 * An hour of a day with sixty phones that listen: each files once a minute, one after the other,
 * and three times all at once. Time is simulated, every answer waits for the disk. Phones and desk
 * share one process and its core, so that what is measured is more than what a phone waits for.
 */
export async function paddockLoad(): Promise<Row[]> {
  mkdirSync(inRoot(".cache"), { recursive: true });
  const folder = mkdtempSync(inRoot(".cache/bench-paddock-"));
  const paddock = await startPaddock({
    ...{ folder, course: inRoot("dist"), port: 0, address: "127.0.0.1" },
  });
  try {
    const { steady, bursts } = await day(paddock.place);
    const lines = readFileSync(join(folder, "day.jsonl"), "utf8").split("\n");
    const ids = lines.flatMap((line) => /^\{"entry":\{[^{]*"id":"([^"]+)"/.exec(line)?.[1] ?? []);
    const wanted = 2 * PHONES * (MINUTES + BURSTS);
    if (ids.length !== wanted || new Set(ids).size !== wanted)
      throw new Error(
        `${ids.length} entries are there, ${new Set(ids).size} of them once, of ${wanted}`,
      );
    return [
      {
        what: "paddock, 60 phones, a report is answered, p99",
        value: quantile(steady, 0.99),
        most: 100,
        unit: "ms",
      },
      {
        what: "paddock, 60 reports at once, p99",
        value: quantile(bursts, 0.99),
        most: 300,
        unit: "ms",
      },
      {
        what: `paddock, memory with ${wanted} entries and ${PHONES + 1} streams`,
        value: process.memoryUsage().rss / 1e6,
        most: 500,
        unit: "MB",
      },
    ];
  } finally {
    await paddock.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function day({ address, code, secret }: { address: string; code: string; secret: string }) {
  const post = async (path: string, token: string, body: object) => {
    const response = await fetch(`${address}/paddock/${path}`, {
      method: "POST",
      headers: { "Content-Type": "application/json", Authorization: `Bearer ${token}` },
      body: JSON.stringify(body),
    });
    const fields = (await response.json()) as { token?: string };
    if (!response.ok) throw new Error(`${path} was answered with ${response.status}`);
    return fields;
  };
  const phones: string[] = [];
  for (let phone = 0; phone < PHONES; phone++)
    phones.push((await post("join", "", { code, name: `Driver ${phone}` })).token ?? "");
  const stop = new AbortController();
  for (const token of [...phones, secret]) void listen(address, token, stop.signal);
  const file = async (phone: number, number: number) => {
    const began = performance.now();
    await post("entries", phones[phone] ?? "", { entries: entriesOf(phone, number) });
    return performance.now() - began;
  };
  const [steady, bursts]: number[][] = [[], []];
  let number = 0;
  for (let minute = 0; minute < MINUTES; minute++, number++)
    for (let phone = 0; phone < PHONES; phone++) steady?.push(await file(phone, number));
  for (let burst = 0; burst < BURSTS; burst++, number++)
    bursts?.push(...(await Promise.all(phones.map((_, phone) => file(phone, number)))));
  stop.abort();
  return { steady: steady ?? [], bursts: bursts ?? [] };
}

/** A phone that listens and throws away what it hears. */
async function listen(address: string, token: string, signal: AbortSignal): Promise<void> {
  try {
    const headers = { Authorization: `Bearer ${token}` };
    const { body } = await fetch(`${address}/paddock/entries?after=0`, { headers, signal });
    for await (const _ of body ?? []);
  } catch (error) {
    if (!signal.aborted) throw error;
  }
}

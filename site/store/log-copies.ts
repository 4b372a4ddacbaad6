import { canonical, type Log, type LogEntry, mergeLogs, readEntry } from "@rollbook/lib";
import { allSecond, keep, keptBelow, putSecond } from "@rollbook/page";

/** Each entry lies under a name of its own, twice, so that no fault costs more than one copy of one. */
export const below = "log/";

/** The log as the device has it, and the texts that no longer can be read. */
interface KeptLog {
  readonly log: Log;
  readonly unreadable: readonly string[];
}

/** How many entries the device took, and how many it refused. */
export interface Counted {
  readonly kept: number;
  readonly refused: number;
}

/** Reads both copies of every entry, and mends the copy that is missing. */
export async function readCopies(): Promise<KeptLog> {
  const first = keptBelow(below);
  const all = await allSecond();
  const second = new Map(
    [...all]
      .filter(([name]) => name.startsWith(below))
      .map(([name, text]) => [name.slice(below.length), text]),
  );
  const names = [...new Set([...first.keys(), ...second.keys()])];
  const read = names.map((name) => readBoth(first.get(name), second.get(name)));
  mend(names, read, first, second);
  return {
    log: mergeLogs({ entries: read.flatMap(({ entries }) => entries) }),
    unreadable: read.flatMap(({ entries, texts }) => (entries.length === 0 ? texts : [])),
  };
}

interface Read {
  readonly entries: readonly LogEntry[];
  readonly texts: readonly string[];
}

function readBoth(...copies: readonly (string | undefined)[]): Read {
  const texts = copies.flatMap((text) => (text === undefined ? [] : [text]));
  return { entries: texts.flatMap((text) => parsed(text) ?? []), texts };
}

function parsed(text: string): LogEntry | undefined {
  try {
    return readEntry(JSON.parse(text)).entry;
  } catch {
    return undefined;
  }
}

type Copies = ReadonlyMap<string, string>;

function mend(names: readonly string[], read: readonly Read[], first: Copies, second: Copies) {
  const lacking = new Map<string, string>();
  names.forEach((name, i) => {
    const entry = read[i]?.entries[0];
    if (entry === undefined) return;
    if (parsed(first.get(name) ?? "") === undefined) keep(below + name, entry);
    if (parsed(second.get(name) ?? "") === undefined)
      lacking.set(below + name, JSON.stringify(entry));
  });
  if (lacking.size > 0) void putSecond(lacking);
}

/** Keeps entries in both copies; one that is there already is left as it is. */
export async function keepEntries(entries: readonly LogEntry[]): Promise<Counted> {
  const texts = named(entries);
  const first = [...texts].map(([name, text]) => keep(name, JSON.parse(text)));
  const second = await putSecond(texts);
  const kept = second ? texts.size : first.filter(Boolean).length;
  return { kept, refused: texts.size - kept };
}

/** Each under its id, or with a number where the same id stands for something else already. */
function named(entries: readonly LogEntry[]): Map<string, string> {
  const taken = keptBelow(below);
  const texts = new Map<string, string>();
  for (const entry of entries) {
    const name = freeName(entry, taken);
    const text = JSON.stringify(entry);
    taken.set(name, text);
    texts.set(below + name, text);
  }
  return texts;
}

function freeName(entry: LogEntry, taken: Copies): string {
  const content = canonical(entry);
  for (let copy = 1; ; copy++) {
    const name = copy === 1 ? entry.id : `${entry.id}~${copy}`;
    const there = parsed(taken.get(name) ?? "");
    if (there === undefined || canonical(there) === content) return name;
  }
}

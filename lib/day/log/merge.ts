import { canonical } from "./canonical.js";
import type { Log, LogEntry } from "./log.js";

/** One id under which different things were written: none is dropped. */
export interface Conflict {
  readonly id: string;
  readonly entries: readonly LogEntry[];
}

/**
 * One log from several: every entry of every log, once.
 *
 * The order of the logs does not matter, and merging again changes nothing. Entries come by time,
 * then by id, then by content. Where one id stands for different things, all are kept: see
 * `conflictsOf`.
 */
export function mergeLogs(...logs: readonly Log[]): Log {
  const byContent = new Map<string, LogEntry>();
  for (const { entries } of logs)
    for (const entry of entries) {
      const content = canonical(entry);
      if (!byContent.has(content)) byContent.set(content, entry);
    }
  const sorted = [...byContent].sort(
    ([a, one], [b, other]) =>
      compare(one.at, other.at) || compare(one.id, other.id) || compare(a, b),
  );
  return { entries: sorted.map(([, entry]) => entry) };
}

/** The log with one more entry, in its place by time. */
export function withEntry(log: Log, entry: LogEntry): Log {
  return mergeLogs(log, { entries: [entry] });
}

/** Ids under which different things were written. */
export function conflictsOf({ entries }: Log): Conflict[] {
  const byId = new Map<string, LogEntry[]>();
  for (const entry of entries) byId.set(entry.id, [...(byId.get(entry.id) ?? []), entry]);
  return [...byId]
    .filter(([, same]) => new Set(same.map(canonical)).size > 1)
    .map(([id, same]) => ({ id, entries: same }));
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

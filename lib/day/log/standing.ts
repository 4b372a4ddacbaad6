import type { EntryKind, Log, LogEntry } from "./log.js";

/**
 * The entries of one kind that count: not withdrawn, and not replaced by another one.
 *
 * @example
 * standing(exampleLog, "event").length // → 1
 */
export function standing<K extends EntryKind>(log: Log, kind: K): Extract<LogEntry, { kind: K }>[] {
  const { gone } = lookUp(log);
  const isOfKind = (entry: LogEntry): entry is Extract<LogEntry, { kind: K }> =>
    entry.kind === kind && !gone.has(entry.id);
  return log.entries.filter(isOfKind);
}

/** The entry that now stands for an id: itself, or what replaced it; nothing when withdrawn. */
export function nowStandingFor<K extends EntryKind>(
  log: Log,
  kind: K,
  id: string,
): Extract<LogEntry, { kind: K }> | undefined {
  const { byId, replacedBy, gone } = lookUp(log);
  const seen = new Set<string>();
  let wanted: string | undefined = id;
  while (wanted !== undefined && gone.has(wanted) && !seen.has(wanted)) {
    seen.add(wanted);
    wanted = replacedBy.get(wanted);
  }
  const found = wanted === undefined || gone.has(wanted) ? undefined : byId.get(wanted);
  const isOfKind = (entry: LogEntry): entry is Extract<LogEntry, { kind: K }> =>
    entry.kind === kind;
  return found !== undefined && isOfKind(found) ? found : undefined;
}

/** A log made ready to look entries up. */
interface LookUp {
  readonly byId: ReadonlyMap<string, LogEntry>;
  readonly replacedBy: ReadonlyMap<string, string>;
  /** Ids that no longer count. */
  readonly gone: ReadonlySet<string>;
}

const lookUps = new WeakMap<Log, LookUp>(); // logs never change, so each is read through once

function lookUp(log: Log): LookUp {
  const known = lookUps.get(log);
  if (known !== undefined) return known;
  const byId = new Map<string, LogEntry>();
  const replacedBy = new Map<string, string>();
  const gone = new Set<string>();
  for (const entry of log.entries) {
    if (!byId.has(entry.id)) byId.set(entry.id, entry);
    if (entry.replaces !== undefined) replacedBy.set(entry.replaces, entry.id);
    if (entry.replaces !== undefined) gone.add(entry.replaces);
    if (entry.kind === "withdrawal") gone.add(entry.of);
  }
  const made = { byId, replacedBy, gone };
  lookUps.set(log, made);
  return made;
}

/** The next id that a device has not used in this log. */
export function nextId({ entries }: Log, device: string): string {
  const own = entries
    .map(({ id }) => id.split("-"))
    .filter(([name]) => name === device)
    .map(([, number]) => Number(number));
  return `${device}-${Math.max(0, ...own) + 1}`;
}

import type { EntryKind, Log, LogEntry, WithdrawalEntry } from "./log.js";

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
  for (const entry of log.entries) {
    if (!byId.has(entry.id)) byId.set(entry.id, entry);
    if (entry.replaces !== undefined) replacedBy.set(entry.replaces, entry.id);
  }
  const gone = takenBack(log.entries, new Set(replacedBy.keys()));
  const made = { byId, replacedBy, gone };
  lookUps.set(log, made);
  return made;
}

/**
 * The ids that were replaced, and those that were taken back by a withdrawal that was not.
 *
 * Withdrawals that nothing points to are settled first, then those they point to; where they point
 * to each other in a circle, all count.
 */
function takenBack(entries: readonly LogEntry[], replaced: ReadonlySet<string>): Set<string> {
  const gone = new Set(replaced);
  const open = new Map<string, WithdrawalEntry[]>(); // by their ids
  const pointed = new Map<string, number>(); // how many that are not settled take an id back
  for (const entry of entries) {
    if (entry.kind !== "withdrawal") continue;
    open.set(entry.id, [...(open.get(entry.id) ?? []), entry]);
    pointed.set(entry.of, (pointed.get(entry.of) ?? 0) + 1);
  }
  const ready = [...open.keys()].filter((id) => !pointed.has(id));
  const settle = (id: string, counts: boolean) => {
    for (const { of } of open.get(id) ?? []) {
      const left = (pointed.get(of) ?? 0) - 1;
      pointed.set(of, left);
      if (counts) gone.add(of);
      if (left === 0 && open.has(of)) ready.push(of);
    }
    open.delete(id);
  };
  for (let id = ready.pop(); id !== undefined; id = ready.pop()) settle(id, !gone.has(id));
  for (const id of [...open.keys()]) settle(id, true);
  return gone;
}

/** The next id that a device has not used in this log. */
export function nextId({ entries }: Log, device: string): string {
  const own = entries
    .map(({ id }) => id.split("-"))
    .filter(([name]) => name === device)
    .map(([, number]) => Number(number));
  return `${device}-${own.reduce((most, number) => Math.max(most, number), 0) + 1}`;
}

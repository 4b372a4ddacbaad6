import { runsOf } from "./driver-runs.js";
import type { EventEntry, Log, LogEntry } from "./log.js";

/**
 * All of a log that belongs to one day, as a log: the day in all its versions, its set-ups, runs,
 * reports, predictions and happenings, what stands for them or takes them back, and the votes and
 * notes that were written from its first version on until another day came.
 */
export function entriesOfDay(log: Log, event: EventEntry): Log {
  const versions = versionsOf(log, event);
  const own = new Set([...versions.map(({ id }) => id), ...runsOf(log, event).map(({ id }) => id)]);
  const others = new Set(
    log.entries.flatMap(({ kind, id }) => (kind === "event" && !own.has(id) ? [id] : [])),
  );
  spread(log, own, others);
  const from = versions.map(({ at }) => at).sort()[0] ?? "";
  const until = log.entries.find(({ id, at }) => others.has(id) && at > from)?.at ?? "9";
  const spoken = ({ kind, at }: LogEntry) => spokenKinds.includes(kind) && at >= from && at < until;
  return { entries: log.entries.filter((entry) => own.has(entry.id) || spoken(entry)) };
}

/** What refers to no day: it is of the one that was the latest then. */
const spokenKinds: readonly LogEntry["kind"][] = ["poll", "note", "question", "vote"];

/** The day in all its versions, those that came after it too. */
function versionsOf({ entries }: Log, event: EventEntry): LogEntry[] {
  const ids = new Set([event.id]);
  for (let before = 0; before < ids.size; ) {
    before = ids.size;
    for (const { kind, id, replaces } of entries) {
      if (kind !== "event" || replaces === undefined) continue;
      if (ids.has(id)) ids.add(replaces);
      if (ids.has(replaces)) ids.add(id);
    }
  }
  return entries.filter(({ id }) => ids.has(id));
}

/** Follows references both ways until nothing more is found; never into another day. */
function spread({ entries }: Log, own: Set<string>, others: ReadonlySet<string>): void {
  for (let before = 0; before < own.size; ) {
    before = own.size;
    for (const entry of entries) {
      if (others.has(entry.id)) continue;
      const refers = referencesOf(entry);
      if (own.has(entry.id)) for (const id of refers) if (!others.has(id)) own.add(id);
      if (refers.some((id) => own.has(id))) own.add(entry.id);
    }
  }
}

/** Ids that an entry refers to. */
function referencesOf(entry: LogEntry): string[] {
  const ids: (string | undefined)[] = [entry.replaces, entry.setUp, entry.run];
  if (entry.kind === "set-up") ids.push(entry.follows);
  if (entry.kind === "withdrawal") ids.push(entry.of);
  if (entry.kind === "note") ids.push(entry.about);
  if (entry.kind === "happening" || entry.kind === "measurement") ids.push(entry.day);
  if (entry.kind === "event") ids.push(...(entry.others ?? []).map(({ setUp }) => setUp));
  return ids.filter((id) => id !== undefined);
}

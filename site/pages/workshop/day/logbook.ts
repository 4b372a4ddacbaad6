import { emptyLog, type Log, type LogEntry, mergeLogs, nextId, withEntry } from "@rollbook/lib";
import { clearShelf, readShelf, type Shelved, shelve } from "../keeping/shelf.js";
import { visitName } from "./identity.js";

type Body<Entry> = Entry extends LogEntry ? Omit<Entry, "id" | "at"> : never;
/** An entry before it has its id and time. */
export type EntryBody = Body<LogEntry>;

let log: Log = emptyLog;
let unreadable: readonly string[] = [];
const listeners = new Set<() => void>();
const keepers = new Set<(shelved: Shelved) => void>();

/** The log of this device, with what this visit wrote. */
export const theLog = (): Log => log;
/** Texts on the device that no longer can be read; they are left where they are. */
export const unreadableTexts = (): readonly string[] => unreadable;

/** Calls whenever the log grew or was cleared. */
export const onLog = (listener: () => void): void => void listeners.add(listener);
/** Calls whenever the device answered whether it kept what was written. */
export const onShelved = (keeper: (shelved: Shelved) => void): void => void keepers.add(keeper);

/** Reads what the device has, beside what is at hand already. */
export async function openLogbook(): Promise<void> {
  const shelf = await readShelf();
  log = mergeLogs(log, shelf.log);
  unreadable = shelf.unreadable;
  for (const listener of listeners) listener();
}

/** Writes one entry: it counts at once, and `onShelved` tells when the device has it. */
export function write<B extends EntryBody>(body: B): B & { id: string; at: string } {
  const entry = { ...body, ...fresh() };
  grow(withEntry(log, entry as unknown as LogEntry), [entry as unknown as LogEntry]);
  return entry;
}

/** Id and time of the next entry. */
export const fresh = (): { id: string; at: string } => ({
  id: nextId(log, visitName),
  at: new Date().toISOString(),
});

/** Takes the entries of another log in; says how many were new. */
export function takeIn(other: Log): number {
  const merged = mergeLogs(log, other);
  const added = merged.entries.length - log.entries.length;
  grow(merged, other.entries);
  return added;
}

function grow(grown: Log, entries: readonly LogEntry[]): void {
  log = grown;
  for (const listener of listeners) listener();
  void shelve(entries).then((shelved) => {
    for (const keeper of keepers) keeper(shelved);
  });
}

/** Forgets all that this device has of the workshop. */
export async function clearLogbook(): Promise<void> {
  await clearShelf();
  log = emptyLog;
  unreadable = [];
  for (const listener of listeners) listener();
}

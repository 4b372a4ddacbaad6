import { effect, type ReadonlySignal, signal } from "@preact/signals-core";
import {
  type EntryHead,
  emptyLog,
  type KnownEntry,
  type Log,
  type LogEntry,
  mergeLogs,
  nextId,
  readEntry,
  withEntry,
} from "@rollbook/lib";
import { countRefusals, forget } from "@rollbook/page";
import { deviceName, visitName } from "./device-name.js";
import { below, keepEntries, readCopies } from "./log-copies.js";

type Written = "id" | "at" | "author";
type Body<Entry> = Entry extends KnownEntry
  ? Omit<Entry, Written> & { readonly author?: string }
  : never;
/** An entry before it has its id and time; where it has no author, this device is. */
type EntryBody = Body<LogEntry>;

const log = signal<Log>(emptyLog);
const unread = signal<readonly string[]>([]);
const last = signal<boolean | undefined>(undefined);
let [under, sound] = [0, true]; // writes that are under way, and whether those before them were kept

/** The log of this device, with what this visit wrote, to be followed. */
export const logNow: ReadonlySignal<Log> = log;
export const theLog = (): Log => log.value;
/** Texts on the device that no longer can be read; they are left where they are. */
export const unreadableTexts = (): readonly string[] => unread.value;
/** Whether the device kept all of what was written last; nothing while it has not answered for all of it. */
export const keptLast: ReadonlySignal<boolean | undefined> = last;

/** Whether the device kept all that was written so far, once it has answered for it. */
export const answered = (): Promise<boolean> =>
  new Promise((resolve) => {
    const stop = effect(() => {
      if (under > 0 && last.value === undefined) return;
      resolve(last.value ?? true);
      queueMicrotask(() => stop());
    });
  });

/** Reads what the device has, beside what is at hand already. */
export async function openLog(): Promise<void> {
  const kept = await readCopies();
  log.value = mergeLogs(log.value, kept.log);
  unread.value = kept.unreadable;
}

/**
 * Writes one entry: it counts at once, and `keptLast` tells when the device has it. What could not be
 * read again is not written: forms keep it from coming here, so that it is a fault of the program.
 */
export function write<B extends EntryBody>(body: B): B & Pick<EntryHead, Written> {
  const entry = { ...body, author: body.author ?? deviceName, ...fresh() };
  const { faults } = readEntry(entry);
  if (faults !== undefined) throw new Error(`An entry cannot be written: ${faults.join(" ")}`);
  grow(withEntry(log.value, entry as unknown as LogEntry), [entry as unknown as LogEntry]);
  return entry;
}

/** Id and time of the next entry. */
export const fresh = (): { id: string; at: string } => ({
  id: nextId(log.value, visitName),
  at: new Date().toISOString(),
});

/** Takes the entries of another log in; says how many were new. */
export function takeIn(other: Log): number {
  const merged = mergeLogs(log.value, other);
  const added = merged.entries.length - log.value.entries.length;
  grow(merged, other.entries);
  return added;
}

function grow(grown: Log, entries: readonly LogEntry[]): void {
  log.value = grown;
  under += 1;
  last.value = undefined;
  void keepEntries(entries).then(({ refused }) => {
    under -= 1;
    sound &&= refused === 0;
    countRefusals(refused);
    if (under > 0) return;
    last.value = sound;
    sound = true;
  });
}

/** Forgets all that this device has of the workshop: the log, the open day, what was begun, and its desk. */
export async function forgetWorkshop(): Promise<void> {
  await forget(below);
  await forget("workshop/");
  await forget("paddock/");
  log.value = emptyLog;
  unread.value = [];
}

/** Reads again what other open pages of the course write. */
export function followLog(): void {
  let asked = 0;
  addEventListener("storage", ({ key }) => {
    if (!key?.startsWith(`rollbook:${below}`)) return;
    asked += 1;
    const mine = asked;
    setTimeout(() => mine === asked && void openLog());
  });
}

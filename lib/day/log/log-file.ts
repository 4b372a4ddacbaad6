import { readJson } from "../../car/file/json.js";
import { readEntry } from "./entry-file.js";
import type { Log, LogEntry } from "./log.js";
import { mergeLogs } from "./merge.js";

/**
 * A log that was read; or all that is wrong with its file, and the log of those entries that are
 * sound, for a reader who wants to keep them.
 */
export type ReadLog =
  | { readonly log: Log; readonly faults?: undefined; readonly sound?: undefined }
  | { readonly log?: undefined; readonly faults: readonly string[]; readonly sound: Log };

/**
 * Version written by this workbook. What is new comes as new kinds of entries, which older workbooks
 * keep as they are, so it need not rise again. Version 2 had entries without authors and is brought
 * forward. In version 1 a balance above 0 meant that the rear slides first; some files of it were
 * written after that had changed, so none can be told right.
 */
const LOG_FILE_VERSION = 3;
const OLDER_VERSION = 2;

const LONGEST_FILE = 50_000_000; // characters, far above any log
const MOST_ENTRIES = 100_000;
const DEEPEST = 60; // parts inside parts, far above any entry
const MOST_FAULTS = 100;

/** Writes a log file: what `readLog` reads, nothing left out. */
export function formatLog({ entries }: Log): string {
  return `${JSON.stringify({ kind: "rollbook log", version: LOG_FILE_VERSION, entries }, null, 1)}\n`;
}

/**
 * Reads a log file.
 *
 * Never throws: whatever the text, the answer is a log or a list of faults, each one sentence.
 */
export function readLog(text: string): ReadLog {
  if (text.length > LONGEST_FILE)
    return refused(`The file is longer than ${LONGEST_FILE} characters.`);
  const { json, fault } = readJson(text);
  return fault === undefined ? logFromJson(json) : refused(fault);
}

/** Reads a log from parsed JSON, as `readLog`. */
export function logFromJson(json: unknown): ReadLog {
  if (typeof json !== "object" || json === null || Array.isArray(json))
    return refused("The file must be one JSON object: a log with its entries.");
  const { kind, version, entries } = json as Record<string, unknown>;
  if (kind !== "rollbook log")
    return refused(`kind is ${brief(kind)} but must be "rollbook log": this is no log file.`);
  if (version === 1)
    return refused(
      "version is 1: its reports may count balance the other way round, above 0 for the rear, so they are not taken in.",
    );
  if (version !== LOG_FILE_VERSION && version !== OLDER_VERSION)
    return refused(
      `version is ${brief(version)} but must be ${OLDER_VERSION} or ${LOG_FILE_VERSION}.`,
    );
  if (!Array.isArray(entries)) return refused(`entries is ${brief(entries)} but must be a list.`);
  if (entries.length > MOST_ENTRIES)
    return refused(`The log has ${entries.length} entries but may have ${MOST_ENTRIES}.`);
  return fromEntries(entries);
}

function fromEntries(items: readonly unknown[]): ReadLog {
  const sound: LogEntry[] = [];
  const faults: string[] = [];
  items.forEach((item, i) => {
    const read = deeperThan(item, DEEPEST)
      ? { faults: [`is nested deeper than ${DEEPEST}.`] }
      : readEntry(item);
    if (read.faults === undefined) sound.push(read.entry);
    else faults.push(...read.faults.map((fault) => `Entry ${i + 1}: ${fault}`));
  });
  const log = mergeLogs({ entries: sound });
  return faults.length === 0 ? { log } : { faults: faults.slice(0, MOST_FAULTS), sound: log };
}

function refused(fault: string): ReadLog {
  return { faults: [fault], sound: { entries: [] } };
}

function brief(value: unknown): string {
  const json = JSON.stringify(value) ?? "missing";
  return json.length > 40 ? `${json.slice(0, 40)}…` : json;
}

/** Whether a value has parts inside parts, more than so many times. */
function deeperThan(value: unknown, levels: number): boolean {
  if (typeof value !== "object" || value === null) return false;
  return levels === 0 || Object.values(value).some((part) => deeperThan(part, levels - 1));
}

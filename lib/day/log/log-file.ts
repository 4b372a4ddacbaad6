import { inShort } from "../../car/file/in-short.js";
import { readJson } from "../../car/file/json.js";
import { readEntry } from "./entry-file.js";
import { FaultList, type Faulty, refused } from "./faulty.js";
import type { Log, LogEntry } from "./log.js";
import { mergeLogs } from "./merge.js";

/** A log that was read, or what is wrong with its file and which entries are sound. */
export type ReadLog = { readonly log: Log; readonly faults?: undefined } | Faulty;

/**
 * Version written by this workbook. What is new comes as new kinds of entries, which older workbooks
 * keep as they are, so it need not rise again. Version 2 had entries without authors and is brought
 * forward. In version 1 a balance above 0 meant that the rear slides first; some files of it were
 * written after that had changed, so none can be told right.
 */
const LOG_FILE_VERSION = 3;
const OLDER_VERSION = 2;

/** A log file or a table of reports that is longer is not read, characters: far above any log. */
export const LONGEST_LOG_FILE = 50_000_000;
/** A log file with more entries is not read. */
export const MOST_ENTRIES = 100_000;

/** Writes one log file, nothing left out; `logFiles` writes more of them where one would be too long to be read. */
export function formatLog({ entries }: Log): string {
  return `${JSON.stringify({ kind: "rollbook log", version: LOG_FILE_VERSION, entries }, null, 1)}\n`;
}

const LONGEST_WRITTEN = 15_000_000; // characters: in UTF-8 still less than LONGEST_LOG_FILE bytes

/**
 * A log as files that `readLog` reads, each; merged they are the log again. One is enough for all but
 * the longest.
 */
export function logFiles(log: Log, longest = LONGEST_WRITTEN): string[] {
  const parts: LogEntry[][] = [[]];
  let length = 0;
  for (const entry of log.entries) {
    const own = JSON.stringify(entry, null, 1).length;
    const last = parts.at(-1) ?? [];
    if (last.length > 0 && (length + own > longest || last.length >= MOST_ENTRIES)) {
      parts.push([entry]);
      length = own;
    } else {
      last.push(entry);
      length += own;
    }
  }
  return parts.map((entries) => formatLog({ entries }));
}

/**
 * Reads a log file.
 *
 * Never throws: whatever the text, the answer is a log or a list of faults, each one sentence.
 */
export function readLog(text: string): ReadLog {
  if (text.length > LONGEST_LOG_FILE)
    return refused([`The file is longer than ${LONGEST_LOG_FILE} characters.`]);
  const { json, fault } = readJson(text);
  return fault === undefined ? logFromJson(json) : refused([fault]);
}

/** Reads a log from parsed JSON, as `readLog`. */
export function logFromJson(json: unknown): ReadLog {
  if (typeof json !== "object" || json === null || Array.isArray(json))
    return refused(["The file must be one JSON object: a log with its entries."]);
  const { kind, version, entries } = json as Record<string, unknown>;
  if (kind !== "rollbook log")
    return refused([`kind is ${inShort(kind)} but must be "rollbook log": this is no log file.`]);
  if (version === 1)
    return refused([
      "version is 1: its reports may count balance the other way round, above 0 for the rear, so they are not taken in.",
    ]);
  if (version !== LOG_FILE_VERSION && version !== OLDER_VERSION)
    return refused([
      `version is ${inShort(version)} but must be ${OLDER_VERSION} or ${LOG_FILE_VERSION}.`,
    ]);
  if (!Array.isArray(entries))
    return refused([`entries is ${inShort(entries)} but must be a list.`]);
  if (entries.length > MOST_ENTRIES)
    return refused([`The log has ${entries.length} entries but may have ${MOST_ENTRIES}.`]);
  return fromEntries(entries);
}

function fromEntries(items: readonly unknown[]): ReadLog {
  const sound: LogEntry[] = [];
  const found = new FaultList();
  items.forEach((item, i) => {
    const read = readEntry(item);
    if (read.faults === undefined) sound.push(read.entry);
    else found.add(`Entry ${i + 1}: `, read.faults);
  });
  const log = mergeLogs({ entries: sound });
  return found.count === 0 ? { log } : found.faulty(log);
}

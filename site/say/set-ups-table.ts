import { formatCsv, type Log, standing, versionsOf } from "@rollbook/lib";
import { changeLabel } from "./change.js";
import type { Reader } from "./reader.js";

const columns = ["id", "at", "follows", "changes", "other", "runs", "note"];

/** Every version of every set-up, one line each, for a spreadsheet: what is new, and how often it was driven. */
export function setUpsTable(log: Log, reader: Reader): string {
  const runs = standing(log, "run");
  const rows = versionsOf(log).map(({ entry, before, changes, other }) => [
    entry.id,
    entry.at,
    entry.follows ?? "",
    changes.map((change) => changeLabel(change, before ?? entry.car, reader)).join("; "),
    other.join("; "),
    String(runs.filter(({ setUp }) => setUp === entry.id).length),
    entry.note ?? "",
  ]);
  return formatCsv([columns, ...rows]);
}

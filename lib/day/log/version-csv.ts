import type { UnitSystem } from "../../units.js";
import { formatCsv } from "./csv.js";
import type { Log } from "./log.js";
import { standing } from "./standing.js";
import { versionsOf } from "./versions.js";

const columns = ["id", "at", "follows", "changes", "other", "runs", "note"];

/** Every version of every set-up, one line each, for a spreadsheet: what is new in words, and how often it was driven. */
export function formatVersions(log: Log, system: UnitSystem = "metric"): string {
  const runs = standing(log, "run");
  const rows = versionsOf(log, system).map(({ entry, labels, other }) => [
    entry.id,
    entry.at,
    entry.follows ?? "",
    labels.join("; "),
    other.join("; "),
    String(runs.filter(({ setUp }) => setUp === entry.id).length),
    entry.note ?? "",
  ]);
  return formatCsv([columns, ...rows]);
}

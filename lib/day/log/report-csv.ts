import { formatCsv, parseCsv, type Table } from "./csv.js";
import { FaultList, type Faulty, refused } from "./faulty.js";
import { type EntryHead, type EventEntry, emptyLog, type Log, type LogEntry } from "./log.js";
import { LONGEST_LOG_FILE, MOST_ENTRIES } from "./log-file.js";
import {
  cellsByColumn,
  columnsOf,
  handColumns,
  reportColumns,
  reportTableColumns,
} from "./report-columns.js";
import { ReportLines } from "./report-lines.js";
import { nowStandingFor, standing } from "./standing.js";
import type { TableDay } from "./table-runs.js";

/** All reports that count, one line each, for a spreadsheet. */
export function formatReports(log: Log): string {
  const rows = standing(log, "report").map(({ id, at, author, replaces, run, report }) => {
    const driven = nowStandingFor(log, "run", run);
    const cells = reportColumns.map((name) => String(report[name] ?? ""));
    return [
      id,
      at,
      author,
      replaces ?? "",
      run,
      driven?.driver ?? "",
      driven?.setUp ?? "",
      ...cells,
    ];
  });
  return formatCsv([reportTableColumns, ...rows]);
}

/** A table to fill in by hand: a line for each driver in each run of the day, or none without a day. */
export function tableToFillIn(event?: EventEntry): string {
  const runs = event?.steps.map((_, i) => String(i + 1)) ?? [];
  const rest = handColumns.slice(2).map(() => "");
  const rows = runs.flatMap((run) => event?.drivers.map((driver) => [driver, run, ...rest]) ?? []);
  return formatCsv([handColumns, ...rows]);
}

/** Reports that were read from a table, or what is wrong with it and which lines are sound. */
export type ReadReports = { readonly log: Log; readonly faults?: undefined } | Faulty;

/**
 * Reads a table of reports. Columns may come in any order and may be left out, but not `run`.
 *
 * A line with an id is one that the workbook wrote, and is read as it was. Any other names its run by
 * the number in the day, with the driver, or by its entry; a run that the plan has and the log does
 * not comes with it. A line that says nothing of a corner is passed over, and one that the log has
 * already gives the entry that it has.
 *
 * Never throws: each fault is one sentence with the line of the text on which its row begins.
 *
 * @param fresh - gives id and time to an entry that has none
 * @param day - where runs and drivers are looked up
 */
export function parseReports(
  text: string,
  fresh: () => Pick<EntryHead, "id" | "at">,
  day: TableDay = { log: emptyLog },
): ReadReports {
  if (text.length > LONGEST_LOG_FILE)
    return refused([`The table is longer than ${LONGEST_LOG_FILE} characters.`]);
  const read = parseCsv(text);
  if (read.table === undefined) return refused([read.fault]);
  const rows = filledRows(read.table, read.lines);
  if (rows.length - 1 > MOST_ENTRIES)
    return refused([`The table has ${rows.length - 1} lines but may have ${MOST_ENTRIES}.`]);
  return fromRows(rows, new ReportLines(day, fresh));
}

interface Row {
  readonly line: number;
  readonly cells: readonly string[];
}

const filledRows = (table: Table, lines: readonly number[]): Row[] =>
  table
    .map((cells, i) => ({ cells, line: lines[i] ?? 0 }))
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));

function fromRows([header, ...rows]: readonly Row[], lines: ReportLines): ReadReports {
  const columns = columnsOf(header?.cells ?? []);
  if ("faults" in columns) return refused(columns.faults);
  const entries = new Set<LogEntry>();
  const found = new FaultList();
  for (const { line, cells } of rows) {
    const given = cellsByColumn(columns, cells);
    const read = "fault" in given ? { faults: [given.fault] } : lines.read(given);
    if (read.faults !== undefined) found.add(`Line ${line}: `, read.faults);
    else for (const entry of read.entries) entries.add(entry);
  }
  const log = { entries: [...entries] };
  return found.count === 0 ? { log } : found.faulty(log);
}

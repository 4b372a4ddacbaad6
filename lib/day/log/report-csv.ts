import { formatCsv, parseCsv } from "./csv.js";
import { readEntry } from "./entry-file.js";
import type { EntryHead, Log, ReportEntry } from "./log.js";
import type { Report } from "./report.js";
import { nowStandingFor, standing } from "./standing.js";

const reportColumns = [
  "corner",
  "phase",
  "speedClass",
  "input",
  "grade",
  "balance",
  "howOften",
  "againstLastRun",
  "confidence",
  "words",
] as const satisfies readonly (keyof Report)[];

/** Columns of the table of reports; driver and set-up are there for the reader, and not read back. */
export const reportTableColumns: readonly string[] = [
  "id",
  "at",
  "author",
  "replaces",
  "run",
  "driver",
  "setUp",
  ...reportColumns,
];

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

/** Reports that were read from a table, or what is wrong with it, one sentence for each fault. */
export type ReadReports =
  | { readonly entries: readonly ReportEntry[]; readonly faults?: undefined }
  | { readonly entries?: undefined; readonly faults: readonly string[] };

/**
 * Reads a table of reports. Columns may come in any order and may be left out, but not `run`.
 *
 * @param fresh - gives id and time to a line that has none
 */
export function parseReports(text: string, fresh: () => Pick<EntryHead, "id" | "at">): ReadReports {
  const { table, fault } = parseCsv(text);
  if (table === undefined) return { faults: [fault] };
  const [header = [], ...lines] = table;
  const wrong = headerFaults(header);
  if (wrong.length > 0) return { faults: wrong };
  const filled = lines.filter((line) => line.some((cell) => cell !== ""));
  const read = filled.map((line) => readEntry(entryOf(header, line, fresh)));
  const faults = read.flatMap(({ faults = [] }, i) => faults.map((one) => `Line ${i + 2}: ${one}`));
  if (faults.length > 0) return { faults };
  return { entries: read.flatMap(({ entry }) => (entry?.kind === "report" ? [entry] : [])) };
}

function headerFaults(header: readonly string[]): string[] {
  const unknown = header.filter((name) => !reportTableColumns.includes(name));
  const faults = unknown.map(
    (name) =>
      `Column ${JSON.stringify(name)} is not known; known are: ${reportTableColumns.join(", ")}.`,
  );
  return header.includes("run") ? faults : [...faults, "The first line has no column run."];
}

function entryOf(
  header: readonly string[],
  line: readonly string[],
  fresh: () => Pick<EntryHead, "id" | "at">,
) {
  const cell = (name: string) => line[header.indexOf(name)] ?? "";
  const given = { id: cell("id"), at: cell("at") };
  const { id, at } = given.id === "" ? fresh() : given;
  const author = cell("author") || (given.id === "" ? cell("driver") : "");
  const fields = reportColumns.filter((name) => cell(name) !== "");
  const report = fields.map((name) => [
    name,
    name === "balance" ? toNumber(cell(name)) : cell(name),
  ]);
  const replaces = cell("replaces");
  return {
    kind: "report",
    id,
    at,
    ...(author !== "" && { author }),
    ...(replaces !== "" && { replaces }),
    run: cell("run"),
    report: Object.fromEntries(report),
  };
}

/** A number as spreadsheets write it, the true minus sign included; what is none stays as it is. */
function toNumber(text: string): number | string {
  const number = Number(text.trim().replace("\u2212", "-"));
  return Number.isNaN(number) ? text : number;
}

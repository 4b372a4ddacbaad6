import { inShort } from "../../car/file/in-short.js";
import type { Report } from "./report.js";

export const reportColumns = [
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
export type ReportColumn = (typeof reportColumns)[number];

/** Columns of the table of reports. The set-up is there for the reader, and not read back. */
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

/** Columns of a table that somebody fills in by hand. */
export const handColumns = [
  "driver",
  "run",
  "corner",
  "phase",
  "input",
  "balance",
  "howOften",
  "againstLastRun",
  "confidence",
  "words",
] as const;

/** What each cell of a row is about; a column without a name is an empty text. */
export type Columns = readonly string[];

/** The columns that a first line names, in whatever capitals and spaces, or what is wrong with it. */
export function columnsOf(header: readonly string[]): Columns | { faults: readonly string[] } {
  const columns = header.map(knownName);
  const faults = columns.flatMap((name, i) => {
    if (name === undefined)
      return [`Column ${inShort(header[i])} is not known; known are: ${all}.`];
    return name !== "" && columns.indexOf(name) < i ? [`Column ${name} comes twice.`] : [];
  });
  if (!columns.includes("run")) faults.push("The first line has no column run.");
  return faults.length > 0 ? { faults } : columns.map((name = "") => name);
}

const all = reportTableColumns.join(", ");

function knownName(given: string): string | undefined {
  const wanted = given.trim().toLowerCase();
  return wanted === "" ? "" : reportTableColumns.find((name) => name.toLowerCase() === wanted);
}

/** The cells of a row by column; what stands in no column is a fault. */
export function cellsByColumn(
  columns: Columns,
  row: readonly string[],
): ReadonlyMap<string, string> | { fault: string } {
  const astray = row.findIndex((cell, i) => (columns[i] ?? "") === "" && cell.trim() !== "");
  if (astray >= 0)
    return {
      fault:
        `cell ${astray + 1} is ${inShort(row[astray])}, but the first line names no column for it; ` +
        "a cell with a comma or semicolon in it must stand in quotes.",
    };
  return new Map(columns.map((name, i) => [name, row[i] ?? ""]));
}

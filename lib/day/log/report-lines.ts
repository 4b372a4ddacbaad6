import { cornerNamed, type Venue } from "../plan/venue.js";
import { canonical } from "./canonical.js";
import { readEntry } from "./entry-file.js";
import type { EntryHead, LogEntry, ReportEntry } from "./log.js";
import type { Report } from "./report.js";
import { withAnswer } from "./report-answers.js";
import { type ReportColumn, reportColumns } from "./report-columns.js";
import { sameName } from "./same-name.js";
import { standing } from "./standing.js";
import { type TableDay, TableRuns } from "./table-runs.js";

type Head = Pick<EntryHead, "id" | "at">;

/** What a line of the table comes to: its report, with the run where that is new, or what is wrong. */
export type ReadLine =
  | { readonly entries: readonly LogEntry[]; readonly faults?: undefined }
  | { readonly entries?: undefined; readonly faults: readonly string[] };

type Cells = ReadonlyMap<string, string>;

/** Reads the lines of one table, one after the other. */
export class ReportLines {
  readonly #day: TableDay;
  readonly #fresh: () => Head;
  readonly #runs: TableRuns;
  readonly #known: ReadonlyMap<string, ReportEntry>;

  constructor(day: TableDay, fresh: () => Head) {
    this.#day = day;
    this.#fresh = fresh;
    this.#runs = new TableRuns(day, fresh);
    this.#known = new Map(standing(day.log, "report").map((entry) => [contentOf(entry), entry]));
  }

  read(cells: Cells): ReadLine {
    return trimmed(cells, "id") === "" ? this.#byHand(cells) : savedBefore(cells);
  }

  /** A line that somebody wrote: nothing where it says nothing, and the entry where the log has it. */
  #byHand(cells: Cells): ReadLine {
    const said = this.#reportIn(cells);
    if (Object.keys(said).length === 0) return { entries: [] };
    const found = this.#runs.find(trimmed(cells, "run"), trimmed(cells, "driver"));
    if ("fault" in found) return { faults: [found.fault] };
    const { run, driver, made } = found;
    const known = this.#known.get(contentOf({ run, report: said as Report }));
    if (known !== undefined) return { entries: [known] };
    const author = trimmed(cells, "author") || driver;
    const read = readReport({ ...this.#fresh(), author, run, report: said });
    return read.entries === undefined
      ? read
      : { entries: [...(made ? [made] : []), ...read.entries] };
  }

  /** What a line says, with speed and grade of a corner that the venue knows. */
  #reportIn(cells: Cells): Readonly<Record<string, unknown>> {
    const venue = this.#day.event?.venue;
    const said = reportColumns.map((name) => [name, saidIn(name, trimmed(cells, name))] as const);
    const report = Object.fromEntries(said.filter(([, value]) => value !== ""));
    if (venue === undefined || typeof report.corner !== "string") return report;
    const corner = nameAtVenue(venue, report.corner);
    return { ...withAnswer({}, "corner", corner, venue), ...report, corner };
  }
}

const nameAtVenue = (venue: Venue, given: string): string =>
  cornerNamed(venue, given)?.name ??
  venue.corners.find(({ name }) => sameName(name, given))?.name ??
  given;

const trimmed = (cells: Cells, name: string): string => (cells.get(name) ?? "").trim();

const contentOf = ({ run, report }: Pick<ReportEntry, "run" | "report">): string =>
  canonical({ run, report });

/** A line that the workbook wrote and that keeps its id: as it was written. */
function savedBefore(cells: Cells): ReadLine {
  const given = (name: ReportColumn) =>
    saidIn(name, isFree(name) ? (cells.get(name) ?? "") : trimmed(cells, name));
  const said = reportColumns.map((name) => [name, given(name)] as const);
  const others = ["id", "at", "author", "replaces"]
    .map((name) => [name, trimmed(cells, name)] as const)
    .filter(([, value]) => value !== "");
  return readReport({
    ...Object.fromEntries(others),
    run: trimmed(cells, "run"),
    report: Object.fromEntries(said.filter(([, value]) => value !== "")),
  });
}

/** Whether a column takes any words. */
const isFree = (name: ReportColumn): boolean => name === "corner" || name === "words";

/** What a cell says: a number of the scale of balance, one of some words, or any words. */
function saidIn(name: ReportColumn, cell: string): number | string {
  if (isFree(name)) return cell;
  return name === "balance" ? toNumber(cell) : cell.toLowerCase();
}

/** A number as spreadsheets write it, the true minus sign included; what is none stays as it is. */
const toNumber = (cell: string): number | string =>
  /^[+\-\u2212]?\d+(\.\d+)?$/.test(cell) ? Number(cell.replace("\u2212", "-")) : cell;

function readReport(body: object): ReadLine {
  const { entry, faults } = readEntry({ kind: "report", ...body });
  if (entry !== undefined) return { entries: [entry] };
  return { faults: faults.map((fault) => fault.replace(/^report\./, "")) };
}

import { cornerNamed, gradeOf, speedClassOf, type Venue } from "../plan/venue.js";
import type { Report } from "./report.js";
import { faultsOfReport } from "./report-file.js";

/** Who reports on which run, and what is said so far. */
export interface Reporting {
  readonly driver: string;
  readonly run: number;
  readonly report: Report;
}

/** Reads what a device kept of a report that was not filed yet. */
export function asReporting(value: unknown): Reporting | undefined {
  const { driver, run, report } = value as Record<string, unknown>;
  if (typeof driver !== "string" || typeof run !== "number") return undefined;
  if (!Number.isInteger(run) || run < 1 || run > 1000) return undefined;
  const said = faultsOfReport(report).length === 0 ? (report as Report) : {};
  return { driver: driver.slice(0, 200), run, report: said };
}

/**
 * The report with one answer. A corner that the venue knows brings its speed and grade with it, and
 * takes them away again; what was answered for a corner that it does not know stays.
 */
export function withAnswer<Field extends keyof Report>(
  report: Report,
  field: Field,
  value: Report[Field],
  venue?: Venue,
): Report {
  const answered = { ...report, [field]: value };
  if (field !== "corner" || venue === undefined) return answered;
  const corner = cornerNamed(venue, answered.corner);
  if (corner !== undefined)
    return { ...answered, speedClass: speedClassOf(corner), grade: gradeOf(corner) };
  if (cornerNamed(venue, report.corner) === undefined) return answered;
  const { speedClass: _speed, grade: _grade, ...rest } = answered;
  return rest;
}

/** The report as it is filed: without answers that say nothing. */
export function tidied(report: Report): Report {
  const said = Object.entries(report).filter(([, value]) => value !== undefined && value !== "");
  return Object.fromEntries(said);
}

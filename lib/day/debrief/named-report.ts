import type { Report } from "../log/report.js";

/** A report and who made it. */
export interface NamedReport {
  readonly driver: string;
  readonly report: Report;
}

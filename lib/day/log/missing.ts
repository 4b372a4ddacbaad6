import { neededFields, type Report } from "./report.js";

/** A field of a report that is still open. */
export interface OpenField {
  readonly field: (typeof neededFields)[number] | (typeof helpfulFields)[number];
  /** Without it nothing follows from the report. */
  readonly needed: boolean;
}

const helpfulFields = ["howOften", "againstLastRun", "confidence"] as const;

/**
 * The fields that a report leaves open, the needed ones first.
 *
 * @example
 * whatIsMissing({ balance: 2 })[0].field // → "corner"
 */
export function whatIsMissing(report: Report): OpenField[] {
  const open = ({ field }: OpenField) => report[field] === undefined;
  return [
    ...neededFields.map((field) => ({ field, needed: true })),
    ...helpfulFields.map((field) => ({ field, needed: false })),
  ].filter(open);
}

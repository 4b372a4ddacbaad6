import type { PhaseName } from "../../balance/phases.js";
import type { Report } from "../log/report.js";
import { median } from "./group.js";

/** All reports on one part of one corner. */
export interface ReportedPlace {
  /** Tells places apart. */
  readonly key: string;
  readonly corner?: string;
  readonly phase?: PhaseName;
  readonly reports: readonly Report[];
  /** The middle of the balances, points. */
  readonly middle: number;
}

/** Reports by place, the one that asks for most first. */
export function placesIn(reports: readonly Report[]): ReportedPlace[] {
  const groups = new Map<string, Report[]>();
  for (const report of reports) {
    const key = JSON.stringify([report.corner, report.phase]);
    groups.set(key, [...(groups.get(key) ?? []), report]);
  }
  const places = [...groups].map(([key, group]) => placeOf(key, group));
  return places.sort((a, b) => Math.abs(b.middle) - Math.abs(a.middle));
}

function placeOf(key: string, reports: readonly Report[]): ReportedPlace {
  const { corner, phase } = reports[0] ?? {};
  const balances = balancesOf(reports);
  return {
    key,
    ...(corner !== undefined && { corner }),
    ...(phase !== undefined && { phase }),
    reports,
    middle: median(balances),
  };
}

/** The balances of some reports from rear to front, so that their order tells no names. */
export const balancesOf = (reports: readonly Report[]): number[] =>
  reports.flatMap(({ balance }) => (balance === undefined ? [] : [balance])).sort((a, b) => a - b);

import type { ReportEntry } from "@rollbook/lib";
import { balanceText } from "../balance.js";
import { report as said } from "./report.js";

/** One report in one line. */
export function reportLine({ report }: Pick<ReportEntry, "report">): string {
  const { corner = said.nowhere, phase = said.noPhase, balance } = report;
  return said.one(corner, phase, balance === undefined ? said.noBalance : balanceText(balance));
}

import type { ReportEntry } from "@rollbook/lib";
import { element } from "@rollbook/page";
import { write } from "../../../store/log.js";
import { driverRun } from "../day/reporter.js";
import { button } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { words } from "../words.js";
import { balanceText } from "./balance-scale.js";

const { report: said } = words;

/** One report in one line. */
export function reportInShort({ report }: Pick<ReportEntry, "report">): string {
  const { corner = said.nowhere, phase = said.noPhase, balance } = report;
  return said.one(corner, phase, balance === undefined ? said.noBalance : balanceText(balance));
}

/** What this driver filed in this run; nobody else's. */
export function filedReports(driver: string, run: number, changed: () => void): HTMLElement[] {
  const reports = driverRun(driver, run)?.reports ?? [];
  if (reports.length === 0) return [];
  const items = reports.map((entry, i) => {
    const withdraw = () => {
      write({ kind: "withdrawal", of: entry.id, reason: said.withdrawReason });
      say(said.withdrawn);
      changed();
    };
    return element(
      "li",
      {},
      element("span", {}, reportInShort(entry)),
      button(`withdraw-${i}`, said.withdraw, withdraw, {
        "aria-label": `${said.withdraw}: ${reportInShort(entry)}`,
      }),
    );
  });
  return [element("h3", {}, said.yours), element("ul", { class: "filed" }, ...items)];
}

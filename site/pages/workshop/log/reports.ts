import { nowStandingFor, type ReportEntry, standing } from "@rollbook/lib";
import { reportLine } from "../../../say/workshop/report-line.js";
import { theLog, write } from "../../../store/log.js";
import { button } from "../parts/fields.js";
import { fold } from "../parts/fold.js";
import { say } from "../parts/notice.js";
import { table } from "../parts/table.js";
import { balanceText } from "../report/balance-scale.js";
import { words } from "../words.js";

const { log: said } = words;

const fields = [
  "corner",
  "phase",
  "input",
  "balance",
  "howOften",
  "againstLastRun",
  "confidence",
  "words",
] as const;

/** Every report that counts. */
export function reports(redraw: () => void): HTMLElement {
  const entries = standing(theLog(), "report");
  const { run, driver } = said.columns;
  const head = [run, driver, ...fields.map((field) => said.columns[field]), said.withdraw];
  const rows = entries.map((entry, i) => row(entry, i, redraw));
  const title = said.count(said.reports, rows.length);
  return fold("log-reports", title, table(said.reports, head, rows));
}

function row(entry: ReportEntry, index: number, redraw: () => void): (string | HTMLElement)[] {
  const driven = nowStandingFor(theLog(), "run", entry.run);
  const { balance, ...rest } = entry.report;
  const shown = { ...rest, balance: balance === undefined ? "" : balanceText(balance) };
  return [
    driven?.run === undefined ? "" : String(driven.run),
    driven?.driver ?? "",
    ...fields.map((field) => shown[field] ?? ""),
    withdrawButton(`withdraw-report-${index}`, entry.id, reportLine(entry), redraw),
  ];
}

/** Takes an entry out of what counts; it stays in the log. */
export function withdrawButton(
  id: string,
  of: string,
  what: string,
  redraw: () => void,
): HTMLElement {
  const withdraw = () => {
    write({ kind: "withdrawal", of, reason: said.withdrawReason });
    say(said.withdrawn);
    redraw();
  };
  return button(id, said.withdraw, withdraw, { "aria-label": said.withdrawThis(what) });
}

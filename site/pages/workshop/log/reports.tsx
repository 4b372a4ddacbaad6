import { handColumns, type Log, nowStandingFor, type ReportEntry, standing } from "@rollbook/lib";
import { balanceText } from "../../../say/balance.js";
import { log as said } from "../../../say/workshop/log.js";
import { reportLine } from "../../../say/workshop/report-line.js";
import { LateFold } from "../../../ui/fold.js";
import { Table } from "../../../ui/table.js";
import { Withdraw } from "./withdraw.js";

const [, , ...fields] = handColumns; // driver and run are those of the run's own entry

const { run, driver, ...names } = said.columns;
const columns = [run, driver, ...fields.map((field) => names[field]), said.withdraw];

/** Every report that counts. */
export const Reports = ({ log }: { readonly log: Log }) => (
  <LateFold id="log-reports" title={said.count(said.reports, standing(log, "report").length)}>
    <ReportTable log={log} />
  </LateFold>
);

function ReportTable({ log }: { readonly log: Log }) {
  const rows = standing(log, "report").map((entry, i) => rowOf(log, entry, i));
  return <Table label={said.reports} columns={columns} rows={rows} />;
}

function rowOf(log: Log, entry: ReportEntry, index: number) {
  const driven = nowStandingFor(log, "run", entry.run);
  const { balance, ...rest } = entry.report;
  const shown = { ...rest, balance: balance === undefined ? "" : balanceText(balance) };
  const what = reportLine(entry);
  return [
    String(driven?.runNumber ?? ""),
    driven?.driver ?? "",
    ...fields.map((field) => shown[field] ?? ""),
    <Withdraw key={entry.id} id={`withdraw-report-${index}`} of={entry.id} what={what} />,
  ];
}

import {
  type Conditions,
  isNamedByRun,
  type Log,
  lapsText,
  nowStandingFor,
  type RunEntry,
  standing,
} from "@rollbook/lib";
import { log as said } from "../../../say/workshop/log.js";
import { Button } from "../../../ui/button.js";
import { focusSoon } from "../../../ui/focus.js";
import { LateFold } from "../../../ui/fold.js";
import { Table } from "../../../ui/table.js";
import { runDraft } from "./drafts.js";
import { RunEditor } from "./run-editor.js";
import { timeOf } from "./time.js";

const { run, driver, setUp, at, conditions, laps } = said.columns;
const columns = [run, driver, setUp, at, conditions, laps, said.edit];

/** Every run that counts; conditions and lap times can be added. */
export function Runs({ log }: { readonly log: Log }) {
  const edited = nowStandingFor(log, "run", runDraft.now.value?.of ?? "");
  const title = said.count(said.runs, standing(log, "run").length);
  return (
    <LateFold id="log-runs" title={title} openAtFirst={edited !== undefined}>
      <div id="run-editor">{edited && <RunEditor key={edited.id} entry={edited} />}</div>
      <RunTable log={log} />
    </LateFold>
  );
}

function RunTable({ log }: { readonly log: Log }) {
  const rows = standing(log, "run").map((entry, i) => rowOf(log, entry, i));
  return <Table label={said.runs} columns={columns} rows={rows} />;
}

function rowOf(log: Log, entry: RunEntry, index: number) {
  const number = String(entry.runNumber ?? "");
  const label = said.editRun(entry.driver, number);
  return [
    number,
    entry.driver,
    setUpText(log, entry),
    timeOf(entry.at),
    conditionsText(entry.conditions),
    lapsText(entry.lapTimes),
    <Button key={entry.id} id={`edit-run-${index}`} work={() => edit(entry)} aria-label={label}>
      {said.edit}
    </Button>,
  ];
}

const setUpText = (log: Log, { setUp }: RunEntry): string =>
  isNamedByRun(setUp) ? "" : (nowStandingFor(log, "set-up", setUp)?.id ?? setUp);

const conditionsText = ({ road, words = "" }: Conditions = {}): string =>
  [road ?? "", words].filter((text) => text !== "").join(", ");

function edit({ id, conditions: { road, words = "" } = {}, lapTimes }: RunEntry): void {
  const draft = { of: id, conditions: words, laps: lapsText(lapTimes) };
  void runDraft.set({ ...draft, ...(road && { road }) });
  focusSoon("#run-conditions");
}

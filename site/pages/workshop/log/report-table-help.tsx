import {
  comparisons,
  confidences,
  driverInputs,
  type EventEntry,
  GREATEST_BALANCE,
  handColumns,
  howOften,
  phaseNames,
  tableToFillIn,
} from "@rollbook/lib";
import { log } from "../../../say/workshop/log.js";
import { reportTable as said } from "../../../say/workshop/report-table.js";
import { Button } from "../../../ui/button.js";
import { LateFold } from "../../../ui/fold.js";
import { say } from "../../../ui/notice.js";
import { Table } from "../../../ui/table.js";
import { eventKnown } from "../day/known-day.js";
import { saveTable } from "./save-table.js";

function save(): void {
  saveTable(said.name, tableToFillIn(eventKnown()));
  say(log.saved(said.name));
}

/** How a table of reports is made by hand, and one to begin with. */
export const ReportTableHelp = () => (
  <LateFold id="report-table-help" title={said.title}>
    <Help />
  </LateFold>
);

function Help() {
  const event = eventKnown();
  const holds = whatHolds(event);
  const rows = handColumns.map((name) => [<code key={name}>{name}</code>, holds[name]]);
  return (
    <>
      <p>{said.help}</p>
      <Table label={said.title} columns={[said.column, said.holds]} rows={rows} />
      <p class="quiet">{said.saved}</p>
      {event === undefined && <p class="beware">{said.noDay}</p>}
      <p class="tools">
        <Button id="save-table-to-fill-in" work={save}>
          {said.save}
        </Button>
      </p>
    </>
  );
}

function whatHolds(event?: EventEntry): Readonly<Record<(typeof handColumns)[number], string>> {
  const oneOf = (values: readonly string[]) => said.oneOf(values.join(", "));
  const corners = event?.venue.corners.map(({ name }) => name) ?? [];
  return {
    driver: said.needed(said.driver(event?.drivers.join(", ") ?? "")),
    run: said.needed(said.run(event?.steps.length ?? 0)),
    corner: said.corner(corners.join(", ")),
    phase: oneOf(phaseNames),
    input: oneOf(driverInputs),
    balance: said.balance(-GREATEST_BALANCE, GREATEST_BALANCE),
    howOften: oneOf(howOften),
    againstLastRun: oneOf(comparisons),
    confidence: oneOf(confidences),
    words: said.words,
  };
}

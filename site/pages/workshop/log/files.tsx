import { formatLog, formatReports } from "@rollbook/lib";
import { reader, saveFile } from "@rollbook/page";
import { setUpsTable } from "../../../say/set-ups-table.js";
import { log as said } from "../../../say/workshop/log.js";
import { theLog } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import { TakeIn } from "./take-in-fields.js";

const today = (): string => new Date().toISOString().slice(0, 10);

function saveLog(): void {
  const name = said.logName(today());
  saveFile(name, formatLog(theLog()));
  say(said.saved(name));
}

const saveReports = (): void => saveTable(said.reportsName(today()), formatReports(theLog()));
const saveSetUps = (): void => saveTable(said.setUpsName(today()), setUpsTable(theLog(), reader));

function saveTable(name: string, table: string): void {
  saveFile(name, `\uFEFF${table}`, "text/csv"); // the mark tells spreadsheets that it is UTF-8
  say(said.saved(name));
}

/** Saving the log, and taking in others. */
export function Files() {
  return (
    <>
      <h3>{said.takeAlong}</h3>
      <p class="tools">
        <Button id="save-log" work={saveLog}>
          {said.saveLog}
        </Button>
        <Button id="save-csv" work={saveReports}>
          {said.saveReports}
        </Button>
        <Button id="save-set-ups" work={saveSetUps}>
          {said.saveSetUps}
        </Button>
      </p>
      <h3>{said.takeIn}</h3>
      <p class="quiet">{said.takeInHelp}</p>
      <TakeIn />
    </>
  );
}

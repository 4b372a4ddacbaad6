import { formatReports, logFiles } from "@rollbook/lib";
import { forFileName, reader, saveFile } from "@rollbook/page";
import { setUpsTable } from "../../../say/set-ups-table.js";
import { log as said } from "../../../say/workshop/log.js";
import { theLog } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import { wholeDay } from "../day/go-on.js";
import { ScanStation } from "../scan/view.js";
import { saveTable } from "./save-table.js";
import { TakeIn } from "./take-in-fields.js";

const today = (): string => new Date().toISOString().slice(0, 10);

function saveLog(): void {
  const files = logFiles(theLog());
  const of = files.length;
  const nameOf = (part: number) =>
    of === 1 ? said.logName(today()) : said.logPartName(today(), part, of);
  for (const [i, text] of files.entries()) saveFile(nameOf(i + 1), text);
  say(of === 1 ? said.saved(nameOf(1)) : said.savedInParts(of));
}

function saveDay(): void {
  const day = wholeDay();
  const name = said.dayName(forFileName(day?.name ?? "", "day"));
  if (day !== undefined) saveFile(name, day.text);
  say(day === undefined ? said.noDayToSave : said.saved(name));
}

const saveReports = (): void => save(said.reportsName(today()), formatReports(theLog()));
const saveSetUps = (): void => save(said.setUpsName(today()), setUpsTable(theLog(), reader));

function save(name: string, table: string): void {
  saveTable(name, table);
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
        <Button id="save-day" work={saveDay}>
          {said.saveDay}
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
      <ScanStation />
      <TakeIn />
    </>
  );
}

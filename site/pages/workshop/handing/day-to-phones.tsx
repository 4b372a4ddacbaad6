import { useSignal } from "@preact/signals";
import { type EventEntry, formatLog } from "@rollbook/lib";
import { forFileName, saveFile } from "@rollbook/page";
import { Button } from "../../../ui/button.js";
import { Fold } from "../../../ui/fold.js";
import { filedDay } from "../day/reporter.js";
import { words } from "../words.js";
import { Codes } from "./codes.js";

const { handing: said } = words;

/** The filed day without its car, for the phones of drivers. */
export function DayToPhones() {
  const shown = useSignal<readonly EventEntry[]>([]);
  const event = filedDay();
  if (event === undefined) return null;
  const save = () =>
    saveFile(said.dayName(forFileName(event.name, "log")), formatLog({ entries: [event] }));
  const show = () => {
    shown.value = [event];
  };
  return (
    <Fold id="day-to-phones" title={said.dayToPhones}>
      <p class="quiet">{said.dayHelp}</p>
      <p class="tools">
        <Button id="day-code" work={show}>
          {said.show}
        </Button>
        <Button id="day-file" work={save}>
          {said.saveDay}
        </Button>
      </p>
      <div>{shown.value.length > 0 && <Codes entries={shown.value} view="report" />}</div>
    </Fold>
  );
}

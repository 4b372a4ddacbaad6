import { useSignal } from "@preact/signals";
import type { Log, LogEntry } from "@rollbook/lib";
import { copied, forFileName, saveFile } from "@rollbook/page";
import { handOverText } from "../../../hand-over/log-text.js";
import { deviceName } from "../../../store/device-name.js";
import { theLog } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import { eventKnown } from "../day/known-day.js";
import { Codes } from "../handing/codes.js";
import { words } from "../words.js";
import { reporting } from "./state.js";

const { report: said } = words;

/** What this device wrote itself. */
const ownEntries = ({ entries }: Log): Log => ({
  entries: entries.filter(({ id }) => id.startsWith(deviceName)),
});

const text = (): string => handOverText(ownEntries(theLog()).entries, eventKnown());

const save = (): void =>
  saveFile(said.fileName(forFileName(reporting.now.value.driver, "log")), text());

async function copy(): Promise<void> {
  say((await copied(text())) ? said.copied : said.notCopied);
}

/** Ways to give the reports to whoever keeps the log. */
export function HandOver() {
  const shown = useSignal<readonly LogEntry[] | undefined>(undefined);
  const show = () => {
    shown.value = ownEntries(theLog()).entries;
  };
  return (
    <div class="part">
      <h3>{said.handOver}</h3>
      <p>{said.handOverHelp}</p>
      <p class="tools">
        <Button id="save-reports" work={save}>
          {said.saveFile}
        </Button>
        <Button id="copy-reports" work={() => void copy()}>
          {said.copy}
        </Button>
        <Button id="show-codes" work={show}>
          {words.handing.show}
        </Button>
      </p>
      {shown.value && <Codes entries={shown.value} day={eventKnown()} view="log" />}
    </div>
  );
}

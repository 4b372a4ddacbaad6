import { useSignal } from "@preact/signals";
import type { Log, LogEntry } from "@rollbook/lib";
import { copied, forFileName, saveFile } from "@rollbook/page";
import { handOverText } from "../../../hand-over/log-text.js";
import { deviceName } from "../../../store/device-name.js";
import { theLog } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { Field } from "../../../ui/field.js";
import { say } from "../../../ui/notice.js";
import { eventKnown } from "../day/known-day.js";
import { Codes } from "../handing/codes.js";
import { isPhone } from "../paddock/place.js";
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

/** Copies, or else shows the text selected, so that the reader can. */
async function copy(show: (text: string) => void): Promise<void> {
  const done = await copied(text());
  if (!done) show(text());
  say(done ? said.copied : said.notCopied);
}

/** Ways to give the reports to whoever keeps the log. */
export function HandOver() {
  const shown = useSignal<readonly LogEntry[] | undefined>(undefined);
  const toCopy = useSignal<string | undefined>(undefined);
  const showText = (text: string) => {
    toCopy.value = text;
  };
  const show = () => {
    shown.value = ownEntries(theLog()).entries;
  };
  return (
    <div class="part">
      <h3>{said.handOver}</h3>
      <p>{isPhone() ? words.paddock.desk.handOver : said.handOverHelp}</p>
      <p class="tools">
        <Button id="save-reports" work={save}>
          {said.saveFile}
        </Button>
        <Button id="copy-reports" work={() => void copy(showText)}>
          {said.copy}
        </Button>
        <Button id="show-codes" work={show}>
          {words.handing.show}
        </Button>
      </p>
      {toCopy.value !== undefined && (
        <Field id="to-copy" label={said.toCopy}>
          <textarea
            id="to-copy"
            rows={4}
            readOnly
            ref={(box) => box?.select()}
            value={toCopy.value}
          />
        </Field>
      )}
      {shown.value && <Codes entries={shown.value} day={eventKnown()} view="log" />}
    </div>
  );
}

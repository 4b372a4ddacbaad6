import { formatLog, type Log } from "@rollbook/lib";
import { element, forFileName, saveFile } from "@rollbook/page";
import { h, render } from "preact";
import { deviceName } from "../../../store/device-name.js";
import { theLog } from "../../../store/log.js";
import { Codes } from "../handing/codes.js";
import { button } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { words } from "../words.js";

const { report: said } = words;

/** What this device wrote itself. */
export const ownEntries = ({ entries }: Log): Log => ({
  entries: entries.filter(({ id }) => id.startsWith(deviceName)),
});

/** Ways to give the reports to whoever keeps the log. */
export function handOver(driver: string): HTMLElement {
  const save = () =>
    saveFile(said.fileName(forFileName(driver, "log")), formatLog(ownEntries(theLog())));
  const copy = () => {
    const text = JSON.stringify(JSON.parse(formatLog(ownEntries(theLog()))));
    const copied = navigator.clipboard?.writeText(text) ?? Promise.reject();
    copied.then(
      () => say(said.copied),
      () => say(said.notCopied),
    );
  };
  const place = element("div", {});
  const show = () => {
    render(h(Codes, { entries: ownEntries(theLog()).entries, view: "log" }), place);
  };
  return element(
    "div",
    { class: "part" },
    element("h3", {}, said.handOver),
    element("p", {}, said.handOverHelp),
    element(
      "p",
      { class: "tools" },
      button("save-reports", said.saveFile, save),
      button("copy-reports", said.copy, copy),
      button("show-codes", words.handing.show, show),
    ),
    place,
  );
}

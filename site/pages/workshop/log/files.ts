import { formatLog, formatReports, type Log } from "@rollbook/lib";
import { element, reader, saveFile } from "@rollbook/page";
import { setUpsTable } from "../../../say/set-ups-table.js";
import { fresh, takeIn, theLog } from "../../../store/log.js";
import { button } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { words } from "../words.js";
import { LARGEST_FILE, readFile, type Taken } from "./take-in.js";

const { log: said } = words;
const MOST_SHOWN = 12;
const today = (): string => new Date().toISOString().slice(0, 10);

/** Saving the log, and taking in others. */
export function files(): HTMLElement[] {
  const results = element("div", { id: "taken-in" });
  const input = element("input", {
    type: "file",
    id: "take-in",
    multiple: true,
    accept: ".json,.csv,application/json,text/csv",
  });
  input.addEventListener("change", () => {
    void takeFiles([...(input.files ?? [])], results).then(() => {
      input.value = "";
    });
  });
  const pasted = element("textarea", { id: "pasted", rows: 3 });
  const take = () => {
    results.replaceChildren(...resultOf(said.pasted, readFile(pasted.value, fresh)));
    pasted.value = "";
  };
  return [
    element("h3", {}, said.takeAlong),
    element(
      "p",
      { class: "tools" },
      button("save-log", said.saveLog, saveLog),
      button("save-csv", said.saveReports, saveReports),
      button("save-set-ups", said.saveSetUps, saveSetUps),
    ),
    element("h3", {}, said.takeIn),
    element("p", { class: "quiet" }, said.takeInHelp),
    element("div", { class: "field" }, element("label", { for: "take-in" }, said.files), input),
    element("div", { class: "field" }, element("label", { for: "pasted" }, said.paste), pasted),
    element("p", { class: "tools" }, button("take-pasted", said.takePasted, take)),
    results,
  ];
}

export function saveLog(): void {
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

async function takeFiles(list: readonly File[], results: HTMLElement): Promise<void> {
  const told: HTMLElement[] = [];
  for (const file of list) told.push(...(await takeFile(file)));
  results.replaceChildren(...told);
}

async function takeFile(file: File): Promise<HTMLElement[]> {
  if (file.size > LARGEST_FILE)
    return [element("p", { class: "beware" }, said.tooLarge(file.name))];
  try {
    return resultOf(file.name, readFile(await file.text(), fresh));
  } catch {
    return [element("p", { class: "beware" }, said.unreadFile(file.name))];
  }
}

/** Takes in what is sound as a whole; else tells the faults and offers what is sound. */
function resultOf(name: string, taken: Taken): HTMLElement[] {
  if (taken.faults === undefined) return [tookIn(name, taken.log)];
  const { faults, sound } = taken;
  const shown = faults.slice(0, MOST_SHOWN).map((fault) => element("li", {}, fault));
  const rest = faults.length - shown.length;
  const more = rest > 0 ? [element("li", {}, said.moreFaults(rest))] : [];
  say(said.refusedFile(name, faults.length));
  const box = element(
    "div",
    { class: "beware" },
    element("p", {}, said.refusedFile(name, faults.length)),
    element("ul", { class: "plain" }, ...shown, ...more),
  );
  const count = sound.entries.length;
  const keepSound = () => box.replaceWith(tookIn(name, sound));
  if (count > 0) box.append(button("take-sound", said.soundOnes(count), keepSound));
  return [box];
}

function tookIn(name: string, log: Log): HTMLElement {
  const added = takeIn(log);
  const sentence = said.tookIn(name, added, log.entries.length - added);
  say(sentence);
  return element("p", {}, sentence);
}

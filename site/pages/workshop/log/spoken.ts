import { type LogEntry, standing } from "@rollbook/lib";
import { element, spell } from "@rollbook/page";
import { theLog, write } from "../../../store/log.js";
import { button, tellFault } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { words } from "../words.js";
import { withdrawButton } from "./reports.js";
import { timeOf } from "./time.js";

const { log: said } = words;

/** Predictions, votes and notes, and a place to add a note. */
export function spoken(redraw: () => void): HTMLElement[] {
  const log = theLog();
  const entries: LogEntry[] = [
    ...standing(log, "prediction"),
    ...standing(log, "poll"),
    ...standing(log, "note"),
  ].sort((a, b) => (a.at < b.at ? -1 : 1));
  const items = entries.map((entry, i) => {
    const text = inWords(entry);
    return element(
      "li",
      {},
      element("span", {}, `${timeOf(entry.at)}: ${text}`),
      withdrawButton(`withdraw-spoken-${i}`, entry.id, text, redraw),
    );
  });
  const list =
    items.length === 0
      ? element("p", { class: "quiet" }, said.nothing)
      : element("ul", { class: "filed" }, ...items);
  return [element("h3", {}, said.other), list, ...noteField(redraw)];
}

function inWords(entry: LogEntry): string {
  if (entry.kind === "prediction")
    return said.prediction(entry.by ?? said.somebody, entry.expects, entry.reason);
  if (entry.kind === "note") return entry.words;
  if (entry.kind !== "poll") return "";
  const { a, b, c, d } = entry.count;
  return spell(said.poll(entry.question, entry.vote, `A ${a}, B ${b}, C ${c}, D ${d}`));
}

function noteField(redraw: () => void): HTMLElement[] {
  const input = element("textarea", { id: "log-note", rows: 2, maxlength: 5000 });
  const add = () => {
    const text = input.value.trim();
    tellFault(input, text === "" ? said.noteFault : undefined);
    if (text === "") return;
    write({ kind: "note", words: text });
    say(said.noteAdded);
    input.value = "";
    redraw();
  };
  return [
    element(
      "div",
      { class: "field" },
      element("label", { for: "log-note" }, said.noteLabel),
      input,
      element("p", { class: "fault", id: "log-note-fault", role: "alert", hidden: true }),
    ),
    element("p", { class: "tools" }, button("add-note", said.addNote, add)),
  ];
}

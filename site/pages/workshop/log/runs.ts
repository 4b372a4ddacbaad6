import {
  type Conditions,
  isNamedByRun,
  nowStandingFor,
  type RoadState,
  type RunEntry,
  roadStates,
  standing,
} from "@rollbook/lib";
import { element } from "@rollbook/page";
import { theLog, write } from "../../../store/log.js";
import { button, choiceField, tellFault } from "../parts/fields.js";
import { fold } from "../parts/fold.js";
import { say } from "../parts/notice.js";
import { table } from "../parts/table.js";
import { words } from "../words.js";
import { lapsText, readLaps } from "./lap-times.js";
import { timeOf } from "./time.js";

const { log: said } = words;
const { columns } = said;

/** Every run that counts; conditions and lap times can be added. */
export function runs(redraw: () => void): HTMLElement {
  const entries = standing(theLog(), "run");
  const editor = element("div", { id: "run-editor" });
  const rows = entries.map((entry, i) => [
    entry.runNumber === undefined ? "" : String(entry.runNumber),
    entry.driver,
    setUpText(entry),
    timeOf(entry.at),
    conditionsText(entry.conditions),
    lapsText(entry.lapTimes),
    editButton(entry, i, editor, redraw),
  ]);
  const { run, driver, setUp, at, conditions, laps } = columns;
  const head = [run, driver, setUp, at, conditions, laps, said.edit];
  return fold("log-runs", said.count(said.runs, rows.length), editor, table(said.runs, head, rows));
}

const setUpText = ({ setUp }: RunEntry): string =>
  isNamedByRun(setUp) ? "" : (nowStandingFor(theLog(), "set-up", setUp)?.id ?? setUp);

function editButton(entry: RunEntry, index: number, editor: HTMLElement, redraw: () => void) {
  const label = said.editRun(entry.driver, String(entry.runNumber ?? ""));
  const open = () => {
    editor.replaceChildren(...editorOf(entry, editor, redraw));
    document.getElementById("run-conditions")?.focus();
  };
  return button(`edit-run-${index}`, said.edit, open, { "aria-label": label });
}

function editorOf(entry: RunEntry, editor: HTMLElement, redraw: () => void): HTMLElement[] {
  const conditions = element("input", { type: "text", id: "run-conditions", maxlength: 1000 });
  conditions.value = entry.conditions?.words ?? "";
  const choices = [
    ["", said.roadNotSaid] as const,
    ...roadStates.map((one) => [one, one] as const),
  ];
  let road = entry.conditions?.road;
  const roadField = choiceField("run-road", said.road, choices, road ?? "", (value) => {
    road = roadStates.find((one) => one === value);
  });
  const laps = element("input", { type: "text", id: "run-laps", maxlength: 4000 });
  laps.value = lapsText(entry.lapTimes);
  const save = () => {
    const read = readLaps(laps.value);
    tellFault(laps, "fault" in read ? said.lapsFault(read.fault) : undefined);
    if ("fault" in read) return;
    write(versionOf(entry, conditionsOf(conditions.value.trim(), road), read.laps));
    say(said.runSaved);
    redraw();
  };
  return [
    element("h4", {}, said.editRun(entry.driver, String(entry.runNumber ?? ""))),
    roadField,
    element(
      "div",
      { class: "field" },
      element("label", { for: "run-conditions" }, columns.conditions),
      conditions,
    ),
    element(
      "div",
      { class: "field" },
      element("label", { for: "run-laps" }, columns.laps, element("span", {}, said.lapsNote)),
      laps,
      element("p", { class: "fault", id: "run-laps-fault", role: "alert", hidden: true }),
    ),
    element(
      "p",
      { class: "tools" },
      button("run-save", said.save, save),
      button("run-cancel", said.cancel, () => editor.replaceChildren()),
    ),
  ];
}

const conditionsText = ({ road, words: said = "" }: Conditions = {}): string =>
  [road ?? "", said].filter((text) => text !== "").join(", ");

function conditionsOf(text: string, road: RoadState | undefined): Conditions | undefined {
  if (text === "" && road === undefined) return undefined;
  return { ...(road && { road }), ...(text !== "" && { words: text }) };
}

/** The run as it now is; it stands for the entry before. */
function versionOf(entry: RunEntry, now: Conditions | undefined, lapTimes: readonly number[]) {
  const { id, at: _, author: _author, conditions: _old, lapTimes: _laps, ...kept } = entry;
  return {
    ...kept,
    replaces: id,
    ...(now && { conditions: now }),
    ...(lapTimes.length > 0 && { lapTimes }),
  };
}

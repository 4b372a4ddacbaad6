import { driverRuns, rotation, type SheetRow } from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { theLog } from "../../../store/log.js";
import { beginRun, filedFor } from "../day/begin-run.js";
import type { Draft } from "../day/draft.js";
import { filedDay } from "../day/reporter.js";
import { toDoInWords } from "../day/row-words.js";
import { button, listOf } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { roundInWords } from "../plan/rotation-table.js";
import { words } from "../words.js";

const { run: said } = words;

/** What the instructor does at this stage, and what to beware of. */
export function forInstructor({ step, warnings }: SheetRow, stage: Stage): HTMLElement[] {
  const note = step.note === undefined ? [] : [`${said.note}: ${step.note}`];
  const lines = [spell(said.notes[stage]), ...note];
  return [
    element("h3", {}, said.notesTitle),
    ...lines.map((line) => element("p", { class: "instructor" }, line)),
    ...warnings.map(({ sentence }) => element("p", { class: "beware" }, spell(sentence))),
  ];
}

type Stage = keyof typeof said.notes;

/** What a room sees of the step: no notes, no warnings, nothing of what is predicted. */
export function forTheWall(
  day: Draft,
  row: SheetRow,
  before: SheetRow | undefined,
  time: string,
): HTMLElement[] {
  const toDo = toDoInWords(row, before?.car ?? day.car, reader.units);
  return [
    element("p", { class: "wall-title" }, said.title(row.run, day.steps.length)),
    element("p", { class: "wall-step" }, spell(toDo.join("; ") || said.kinds[row.step.kind])),
    element("p", { class: "clock" }, time),
    whoDrives(day, row.run),
  ];
}

/** What is done to the car before this run, and the button that files it. */
export function onTheCar(
  day: Draft,
  row: SheetRow,
  before: SheetRow | undefined,
  filed: () => void,
): HTMLElement[] {
  const toDo = toDoInWords(row, before?.car ?? day.car, reader.units);
  const begin = () => {
    const begun = beginRun(row.run);
    say(begun === undefined ? said.notBegunRun : said.begun(begun.runs));
    filed();
    document.getElementById("run-is-filed")?.focus();
  };
  return [
    element("h3", {}, said.toDo),
    toDo.length > 0 ? listOf(toDo, "to-do") : element("p", { class: "quiet" }, said.nothingToDo),
    ...filing(row.run, begin),
  ];
}

/** What is filed of the run; the button that files it, unless all of it is. */
function filing(run: number, begin: () => void): HTMLElement[] {
  const ready = button("begin-run", said.ready, begin, { class: "large" });
  switch (filedFor(run)) {
    case "as planned":
      return [element("p", { id: "run-is-filed", tabindex: -1, class: "quiet" }, said.isFiled)];
    case "otherwise":
      return [element("p", { class: "beware" }, said.filedOtherwise), ready];
    case "nothing":
      return [element("p", { class: "quiet" }, said.readyHelp), ready];
  }
}

/** Who is out in which round, and who watches. */
export function whoDrives({ drivers, cars }: Draft, run: number): HTMLElement {
  const rounds = rotation(drivers, cars, run).map((round) =>
    element("li", {}, roundInWords(round)),
  );
  return element("ol", { class: "plain" }, ...rounds);
}

/** How many reports of each driver are in, and nothing of what they say. */
export function reportsIn({ drivers }: Draft, run: number): HTMLElement {
  const event = filedDay();
  const runs = event === undefined ? [] : driverRuns(theLog(), event);
  const counts = drivers.map((driver) => {
    const own = runs.find((one) => one.run === run && one.driver === driver);
    return element("li", {}, said.reportCount(driver, own?.reports.length ?? 0));
  });
  return element("ul", { class: "counts" }, ...counts);
}

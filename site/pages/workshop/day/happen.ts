import {
  type HappeningEntry,
  happeningsOf,
  type LogEntry,
  runsOf,
  sameName,
  setUpOfRun,
  stages,
} from "@rollbook/lib";
import { theLog, write } from "../../../store/log.js";
import { say } from "../../../ui/notice.js";
import { clock } from "../run/state.js";
import { words } from "../words.js";
import { beginRun } from "./begin-run.js";
import { fileDay } from "./open-day.js";
import { driverRun, filedDay, runFor } from "./reporter.js";

const { happen: said } = words;

/** What is said of a happening, apart from the day, the run and the stage that were at hand. */
export type Told = Pick<HappeningEntry, "what"> &
  Partial<
    Pick<
      HappeningEntry,
      "carNumber" | "driver" | "other" | "change" | "minutes" | "conditions" | "runNumber"
    >
  >;

const aboutTheCar = (what: HappeningEntry["what"]): boolean =>
  what === "change skipped" || what === "other change";

/** Writes down what happened in the run at hand; the day is filed first. */
function writeDown(told: Told): HappeningEntry | undefined {
  fileDay();
  const event = filedDay();
  if (event === undefined) {
    say(words.run.notBegunRun);
    return undefined;
  }
  const { run, stage } = clock.now.value;
  const place = { runNumber: run, ...(stages[stage] && { stage: stages[stage] }) };
  return write({ kind: "happening", day: event.id, ...place, ...told });
}

/** Writes down what happened, files what follows of it, and says it with a way back. */
export function happens(told: Told, sentence: string, then: () => void = () => {}): void {
  const before = new Set(theLog().entries.map(({ id }) => id));
  const entry = writeDown(told);
  if (entry === undefined) return;
  if (aboutTheCar(told.what)) beginRun(entry.runNumber, told.carNumber);
  then();
  const added = theLog().entries.filter(({ id }) => !before.has(id));
  say(sentence, () => undo(entry, added));
}

/** As it was before; where new versions stand for what was filed, the run is filed as the plan says. */
function undo(entry: HappeningEntry, added: readonly LogEntry[]): void {
  if (added.some(({ replaces }) => replaces !== undefined)) takeBack(entry);
  else for (const { id } of added) if (!isDay(id)) withdraw(id);
}

const isDay = (id: string): boolean =>
  theLog().entries.some((entry) => entry.id === id && entry.kind === "event");

const withdraw = (of: string): void => void write({ kind: "withdrawal", of, reason: said.reason });

/** Takes a happening back; the car of a run that was filed with it is filed as the plan says. */
export function takeBack({ id, what, runNumber, carNumber = 1 }: HappeningEntry): void {
  withdraw(id);
  const event = filedDay();
  const filed = event && setUpOfRun(theLog(), event, runNumber, carNumber);
  if (aboutTheCar(what) && filed !== undefined) beginRun(runNumber, carNumber);
}

/** What happened on the open day and counts, by time. */
export function happenedToday(): readonly HappeningEntry[] {
  const event = filedDay();
  return event === undefined ? [] : happeningsOf(theLog(), event);
}

/** Takes a driver's run back who left before driving it: one that has no reports yet. */
export function withdrawUndriven(driver: string, run: number): void {
  const event = filedDay();
  const reports = driverRun(driver, run)?.reports.length ?? 0;
  if (event === undefined || reports > 0) return;
  for (const entry of runsOf(theLog(), event))
    if (entry.runNumber === run && sameName(entry.driver, driver)) withdraw(entry.id);
}

/** Moves a driver's reports from one run to another; says how many. */
export function moveReports(driver: string, from: number, to: number): number {
  const reports = driverRun(driver, from)?.reports ?? [];
  if (reports.length === 0 || from === to) return 0;
  const target = runFor(driver, to).id;
  for (const { id, at: _, ...kept } of reports) write({ ...kept, run: target, replaces: id });
  return reports.length;
}

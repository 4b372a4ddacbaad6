import { roundsOf, type SheetRow, stages } from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import type { Draft } from "../day/draft.js";
import { onLog, write } from "../day/logbook.js";
import { theDay } from "../day/open-day.js";
import { toDoInWords } from "../day/row-words.js";
import { worked } from "../day/worked.js";
import { keepState, recallState } from "../keeping/kept-state.js";
import { button } from "../parts/fields.js";
import { needsDay } from "../parts/needs-day.js";
import { say } from "../parts/notice.js";
import { refill } from "../parts/refill.js";
import { wall } from "../parts/wall.js";
import { words } from "../words.js";
import { onTheCar, reportsIn, whoDrives } from "./at-hand.js";
import {
  asClock,
  atRun,
  type Clock,
  clockText,
  dueAt,
  moved,
  paused,
  readClock,
  started,
  stoppedClock,
} from "./clock.js";
import { poll } from "./poll.js";
import { stageList } from "./stage-list.js";

const { run: said } = words;

/** Fills the run's section: the clock, the step at hand, notes and votes. */
export function runView(section: HTMLElement): () => void {
  let clock: Clock = stoppedClock;
  let toldOver = "";
  const face = element("p", { class: "clock" });
  const behind = element("p", { class: "quiet" });
  const step = element("div", {});
  const big = wall(said.wall, "open-wall");
  const vote = poll((question) => big.question.replaceChildren(...question));

  const rowsNow = (): readonly SheetRow[] => {
    const day = theDay();
    return (day && worked(day).rows) ?? [];
  };
  const rowNow = () => rowsNow()[clock.run - 1];

  function set(changed: Clock): void {
    clock = changed;
    void keepState("clock", clock);
    draw();
  }

  function tick(): void {
    const day = theDay();
    const row = rowNow();
    if (day === undefined || row === undefined || section.hidden) return;
    const reading = readClock(clock, row, roundsOf(day), Date.now());
    const stage = words.stages[stages[clock.stage] ?? "teach"];
    const time = clockText(Math.abs(reading.left));
    face.textContent = reading.left < 0 ? said.over(time, stage) : said.left(time, stage);
    behind.textContent = behindText(reading.behind);
    const bigFace = big.shown.querySelector(".clock");
    if (bigFace !== null) bigFace.textContent = face.textContent;
    const key = `${clock.run} ${clock.stage}`;
    if (reading.left < 0 && clock.since !== undefined && toldOver !== key) {
      toldOver = key;
      say(said.stageOver(stage));
    }
  }

  function draw(): void {
    const day = theDay();
    const rows = rowsNow();
    const row = rowNow();
    if (day === undefined || row === undefined) return;
    refill(step, ...stepParts(day, row, rows));
    refill(big.shown, ...wallParts(day, row, rows));
    tick();
  }

  function stepParts(day: Draft, row: SheetRow, rows: readonly SheetRow[]): HTMLElement[] {
    const running = clock.since !== undefined;
    const now = () => Date.now();
    const due = dueAt(clock, row, roundsOf(day));
    const toggle = () => set(running ? paused(clock, now()) : started(clock, now(), due));
    const go = (by: 1 | -1) => () => set(moved(clock, by, rows.length, now()));
    const toRun = (run: number) => () => {
      if (rows[run - 1] !== undefined) set(atRun(clock, run));
    };
    const stage = stages[clock.stage] ?? "teach";
    return [
      element("h3", {}, `${said.title(row.run, rows.length)}: ${said.kinds[row.step.kind]}`),
      element(
        "p",
        { class: "tools" },
        button("run-earlier", said.earlier, toRun(row.run - 1)),
        button("run-later", said.later, toRun(row.run + 1)),
        button("clock-reset", said.reset, () => set(stoppedClock)),
        button("open-wall", said.wall, big.open),
      ),
      element(
        "div",
        { class: "at-hand" },
        element(
          "div",
          {},
          face,
          behind,
          element(
            "p",
            { class: "tools" },
            button("clock-toggle", running ? said.pause : said.start, toggle, { class: "large" }),
            button("stage-back", said.back, go(-1)),
            button("stage-next", said.next, go(1)),
          ),
          stageList(row, roundsOf(day), clock.stage),
        ),
        element(
          "div",
          {},
          element("h3", {}, said.notesTitle),
          element("p", { class: "instructor" }, spell(said.notes[stage])),
          ...(row.step.note === undefined
            ? []
            : [element("p", { class: "instructor" }, `${said.note}: ${row.step.note}`)]),
          ...row.warnings.map(({ sentence }) => element("p", { class: "beware" }, spell(sentence))),
          ...onTheCar(day, row, rows[row.run - 2], draw),
        ),
        element(
          "div",
          {},
          element("h3", {}, said.drives),
          whoDrives(day, row.run),
          element("h3", {}, said.reports),
          reportsIn(day, row.run),
        ),
      ),
    ];
  }

  function wallParts(day: Draft, row: SheetRow, rows: readonly SheetRow[]): HTMLElement[] {
    const toDo = toDoInWords(row, rows[row.run - 2]?.car ?? day.car, reader.units);
    return [
      element("p", { class: "wall-title" }, said.title(row.run, rows.length)),
      element("p", { class: "wall-step" }, spell(toDo.join("; ") || said.kinds[row.step.kind])),
      element("p", { class: "clock" }),
      whoDrives(day, row.run),
    ];
  }

  function noteField(): HTMLElement {
    const input = element("textarea", { id: "run-note", rows: 2, maxlength: 5000 });
    const keep = () => {
      const text = input.value.trim();
      if (text === "") return;
      write({ kind: "note", words: text });
      input.value = "";
      say(said.noted);
    };
    return element(
      "div",
      { class: "part" },
      element(
        "div",
        { class: "field" },
        element("label", { for: "run-note" }, said.addNote),
        input,
      ),
      element("p", { class: "tools" }, button("keep-note", said.keepNote, keep)),
    );
  }

  void recallState("clock", asClock).then((kept) => {
    if (kept === undefined) return;
    clock = kept;
    if (!section.hidden) show();
  });
  setInterval(tick, 1000);
  onLog(() => {
    if (!section.hidden) draw();
  });

  function show(): void {
    const heading = element("h2", { tabindex: -1 }, words.views.run);
    const rows = rowsNow();
    if (theDay() === undefined || rows.length === 0) {
      refill(section, heading, ...needsDay(theDay() === undefined ? undefined : said.noRuns));
      return;
    }
    if (clock.run > rows.length) clock = stoppedClock;
    refill(section, heading, step, vote, noteField(), big.place);
    draw();
  }
  return show;
}

function behindText(minutes: number | undefined): string {
  if (minutes === undefined) return said.notBegun;
  const whole = Math.round(minutes);
  if (whole === 0) return said.onPlan;
  return whole > 0 ? said.behind(whole) : said.ahead(-whole);
}

import { roundsOf, type SheetRow, stages } from "@rollbook/lib";
import { documentOf, element } from "@rollbook/page";
import { logNow } from "../../../store/log.js";
import type { Draft } from "../day/draft.js";
import { theDay } from "../day/open-day.js";
import { worked } from "../day/worked.js";
import { needsDay } from "../parts/needs-day.js";
import { refill } from "../parts/refill.js";
import { wall } from "../parts/wall.js";
import { words } from "../words.js";
import { forInstructor, forTheWall, onTheCar, reportsIn, whoDrives } from "./at-hand.js";
import { asClock, type Clock, stoppedClock } from "./clock.js";
import { runButtons, stageButtons } from "./controls.js";
import { clockFace } from "./face.js";
import { noteField } from "./note-field.js";
import { poll } from "./poll.js";
import { stageList } from "./stage-list.js";

const { run: said } = words;

const keptClock = documentOf({ key: "workshop/clock", empty: stoppedClock, read: asClock });

/** Fills the run's section: the clock, the step at hand, notes and votes. */
export function runView(section: HTMLElement): () => void {
  let clock: Clock = stoppedClock;
  const face = clockFace();
  const step = element("div", {});
  const big = wall(said.wall, "open-wall");
  const vote = poll((question) => big.question.replaceChildren(...question));

  /** Day, runs and the run at hand, where there are any. */
  function atHand() {
    const day = theDay();
    const rows = (day && worked(day).rows) ?? [];
    const row = rows[clock.run - 1];
    return day === undefined || row === undefined ? undefined : { day, rows, row };
  }

  function set(changed: Clock): void {
    clock = changed;
    void keptClock.set(clock);
    draw();
  }

  function tick(): void {
    const now = atHand();
    if (now === undefined || section.hidden) return;
    face.show(clock, now.row, now.day);
    const large = big.shown.querySelector(".clock");
    if (large !== null) large.textContent = face.time.textContent;
  }

  function draw(): void {
    const now = atHand();
    if (now === undefined) return;
    const { day, rows, row } = now;
    const time = face.time.textContent ?? "";
    refill(step, ...stepParts(day, row, rows));
    refill(big.shown, ...forTheWall(day, row, rows[row.run - 2], time));
    tick();
  }

  function stepParts(day: Draft, row: SheetRow, rows: readonly SheetRow[]): HTMLElement[] {
    const columns = [
      [
        face.time,
        face.behind,
        stageButtons(clock, row, day, set),
        stageList(row, roundsOf(day), clock.stage),
      ],
      [
        ...forInstructor(row, stages[clock.stage] ?? "teach"),
        ...onTheCar(day, row, rows[row.run - 2], draw),
      ],
      [
        element("h3", {}, said.drives),
        whoDrives(day, row.run),
        element("h3", {}, said.reports),
        reportsIn(day, row.run),
      ],
    ];
    return [
      element("h3", {}, `${said.title(row.run, rows.length)}: ${said.kinds[row.step.kind]}`),
      runButtons(clock, rows.length, set, big.open),
      element(
        "div",
        { class: "at-hand" },
        ...columns.map((column) => element("div", {}, ...column)),
      ),
    ];
  }

  function show(): void {
    const heading = element("h2", { tabindex: -1 }, words.views.run);
    if (atHand() === undefined) clock = stoppedClock;
    if (atHand() === undefined) {
      refill(section, heading, ...needsDay(theDay() === undefined ? undefined : said.noRuns));
      return;
    }
    refill(section, heading, step, vote, noteField(), big.place);
    draw();
  }

  void keptClock.open().then(() => {
    clock = keptClock.now.value;
    if (!section.hidden) show();
  });
  setInterval(tick, 1000);
  logNow.subscribe(() => {
    if (!section.hidden) draw();
  });
  return show;
}

import { roundsOf, type SheetRow } from "@rollbook/lib";
import { element } from "@rollbook/page";
import type { Draft } from "../day/draft.js";
import { button } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { words } from "../words.js";
import { atRun, type Clock, dueAt, moved, paused, started, stoppedClock } from "./clock.js";

const { run: said } = words;

/** From run to run, from the start, and on the wall. */
export function runButtons(
  clock: Clock,
  runs: number,
  set: (clock: Clock) => void,
  openWall: () => void,
): HTMLElement {
  const to = (run: number) => () => {
    if (run >= 1 && run <= runs) set(atRun(clock, run));
  };
  const reset = () => {
    set(stoppedClock);
    say(said.wasReset, { label: words.takeBack, work: () => set(clock) });
  };
  return element(
    "p",
    { class: "tools" },
    button("run-earlier", said.earlier, to(clock.run - 1)),
    button("run-later", said.later, to(clock.run + 1)),
    button("clock-reset", said.reset, reset),
    button("open-wall", said.wall, openWall),
  );
}

/** Starts and holds the clock, and goes from stage to stage. */
export function stageButtons(
  clock: Clock,
  row: SheetRow,
  day: Draft,
  set: (clock: Clock) => void,
): HTMLElement {
  const running = clock.since !== undefined;
  const due = dueAt(clock, row, roundsOf(day));
  const toggle = () => set(running ? paused(clock, Date.now()) : started(clock, Date.now(), due));
  const go = (by: 1 | -1) => () => set(moved(clock, by, day.steps.length, Date.now()));
  return element(
    "p",
    { class: "tools" },
    button("clock-toggle", running ? said.pause : said.start, toggle, { class: "large" }),
    button("stage-back", said.back, go(-1)),
    button("stage-next", said.next, go(1)),
  );
}

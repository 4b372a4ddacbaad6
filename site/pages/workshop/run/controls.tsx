import {
  atNextRound,
  atRun,
  dueAt,
  moved,
  paused,
  stageMinutes,
  stages,
  started,
  stoppedClock,
} from "@rollbook/lib";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import { openWall } from "../../../ui/wall.js";
import { words } from "../words.js";
import { type AtHand, clockAt, readingOf, setClock } from "./state.js";

const { run: said } = words;

/** From run to run, from the start, and on the wall. */
export function RunButtons({ at }: { readonly at: AtHand }) {
  const clock = clockAt(at);
  const to = (run: number) => () => {
    if (run >= 1 && run <= at.rows.length) setClock(atRun(clock, run));
  };
  const reset = () => {
    setClock(stoppedClock);
    say(said.wasReset, () => setClock(clock));
  };
  return (
    <p class="tools">
      <Button id="run-earlier" work={to(at.row.run - 1)}>
        {said.earlier}
      </Button>
      <Button id="run-later" work={to(at.row.run + 1)}>
        {said.later}
      </Button>
      <Button id="clock-reset" work={reset}>
        {said.reset}
      </Button>
      <Button id="open-wall" work={openWall}>
        {said.wall}
      </Button>
      <Button id="open-wall-window" work={openWindow}>
        {said.wallWindow}
      </Button>
    </p>
  );
}

/** A second window follows what happens here, since both read what the device keeps. */
function openWindow(): void {
  const opened = window.open("workshop.html#wall", "rollbook-wall", "popup,width=1280,height=720");
  say(opened === null ? said.wallBlocked : said.wallOpened);
}

/** Starts and holds the clock, and goes from stage to stage. */
export function StageButtons({ at }: { readonly at: AtHand }) {
  const clock = clockAt(at);
  const running = clock.since !== undefined;
  const due = dueAt(clock, at.row);
  const toggle = () =>
    setClock(running ? paused(clock, Date.now()) : started(clock, Date.now(), due));
  const { round } = readingOf(at);
  const nextRound = () => setClock(atNextRound(clock, at.row, Date.now()));
  const go = (by: 1 | -1) => () => setClock(moved(clock, by, at.rows.length, Date.now()));
  return (
    <p class="tools">
      <Button id="clock-toggle" large work={toggle}>
        {running ? said.pause : said.start}
      </Button>
      <Button id="stage-back" work={go(-1)}>
        {said.back}
      </Button>
      <Button id="stage-next" work={go(1)}>
        {said.next}
      </Button>
      {round !== undefined && round.round < round.of && (
        <Button id="next-round" work={nextRound}>
          {words.happen.nextRound}
        </Button>
      )}
    </p>
  );
}

/** The stages of the run with their minutes; the one at hand is marked. */
export function StageList({ at }: { readonly at: AtHand }) {
  const minutes = stageMinutes(at.row);
  return (
    <ol class="stages">
      {stages.map((stage, i) => (
        <li key={stage} aria-current={i === clockAt(at).stage ? "step" : undefined}>
          <span>{words.stages[stage]}</span>
          <span class="number">{words.minutes(minutes[i] ?? 0)}</span>
        </li>
      ))}
    </ol>
  );
}

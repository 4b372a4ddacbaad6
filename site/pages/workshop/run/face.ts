import { rotation, roundsOf, type SheetRow, stages } from "@rollbook/lib";
import { element } from "@rollbook/page";
import type { Draft } from "../day/draft.js";
import { say } from "../parts/notice.js";
import { words } from "../words.js";
import { buzz } from "./buzz.js";
import { type Clock, clockText, type Reading, readClock } from "./clock.js";

const { run: said } = words;

/** The face of the clock and how the day stands against its plan. */
export interface Face {
  readonly time: HTMLElement;
  readonly behind: HTMLElement;
  /** Shows the clock as it is now; says once when a stage is over or drivers swap. */
  show(clock: Clock, row: SheetRow, day: Draft): void;
}

export function clockFace(): Face {
  const time = element("p", { class: "clock" });
  const behind = element("p", { class: "quiet" });
  let before: Moment | undefined;
  return {
    time,
    behind,
    show(clock, row, day) {
      const reading = readClock(clock, row, roundsOf(day), Date.now());
      const stage = words.stages[stages[clock.stage] ?? "teach"];
      time.textContent = timeText(reading, stage, driversOf(day, row, reading));
      behind.textContent = behindText(reading.behind);
      const now = momentOf(clock, reading);
      if (clock.since !== undefined) tell(before, now, stage, driversOf(day, row, reading));
      before = now;
    },
  };
}

/** Where the clock was when it was read: one stage of one run, one round of it, over or not. */
interface Moment {
  readonly place: string;
  readonly round: number;
  readonly over: boolean;
}

const momentOf = ({ run, stage }: Clock, { left, round }: Reading): Moment => ({
  place: `${run} ${stage}`,
  round: round?.round ?? 1,
  over: left < 0,
});

/** Tells what has happened since the clock was read last in the same stage. */
function tell(before: Moment | undefined, now: Moment, stage: string, drivers: string): void {
  const same = before?.place === now.place ? before : undefined;
  if (now.over && same?.over !== true) say(said.stageOver(stage));
  else if (same !== undefined && now.round > same.round) say(said.swap(now.round, drivers));
  else return;
  buzz();
}

function timeText({ left, round }: Reading, stage: string, drivers: string): string {
  if (round === undefined) {
    const shown = clockText(Math.abs(left));
    return left < 0 ? said.over(shown, stage) : said.left(shown, stage);
  }
  const shown = clockText(Math.abs(round.left));
  const time = round.left < 0 ? said.roundOver(shown) : said.roundLeft(shown);
  return said.round(round.round, round.of, drivers, time);
}

/** Who is out in the round at hand. */
function driversOf({ drivers, cars }: Draft, { run }: SheetRow, { round }: Reading): string {
  if (round === undefined) return "";
  const { stints = [] } = rotation(drivers, cars, run)[round.round - 1] ?? {};
  return stints.map(({ driver }) => driver).join(", ");
}

function behindText(minutes: number | undefined): string {
  if (minutes === undefined) return said.notBegun;
  const whole = Math.round(minutes);
  if (whole === 0) return said.onPlan;
  return whole > 0 ? said.behind(whole) : said.ahead(-whole);
}

import { effect } from "@preact/signals";
import { type Clock, type ClockReading, type SheetRow, stages } from "@rollbook/lib";
import { clockText } from "../../../say/clock.js";
import { say } from "../../../ui/notice.js";
import type { Draft } from "../day/draft.js";
import { roundsOn } from "../day/worked.js";
import { words } from "../words.js";
import { buzz } from "./buzz.js";
import { sound } from "./sound.js";
import { type AtHand, atHand, clock, clockAt, readingOf } from "./state.js";

const { run: said } = words;

const stageOf = ({ stage }: Clock): string => words.stages[stages[stage] ?? "teach"];

/** The time of the stage at hand. */
export function Time({ at }: { readonly at: AtHand }) {
  const reading = readingOf(at);
  const drivers = driversOf(at.day, at.row, reading);
  return <p class="clock">{timeText(reading, stageOf(clockAt(at)), drivers)}</p>;
}

/** How the day stands against its plan. */
export function Behind({ at }: { readonly at: AtHand }) {
  return <p class="quiet">{behindText(readingOf(at).behind)}</p>;
}

/** Where the clock was when it was read: one stage of one run, one round of it, over or not. */
interface Moment {
  readonly place: string;
  readonly round: number;
  readonly over: boolean;
}

const momentOf = ({ run, stage }: Clock, { left, round }: ClockReading): Moment => ({
  place: `${run} ${stage}`,
  round: round?.round ?? 1,
  over: left < 0,
});

/** Says once when a stage is over or drivers swap, for as long as the clock runs. */
export function watchClock(): void {
  let before: Moment | undefined;
  effect(() => {
    if (clock.now.value.since === undefined) return; // so that its day need not be worked out
    const at = atHand.value;
    if (at === undefined) return;
    const reading = readingOf(at);
    const shown = clockAt(at);
    const now = momentOf(shown, reading);
    const told = before;
    before = now;
    if (shown.since !== undefined)
      tell(told, now, stageOf(shown), driversOf(at.day, at.row, reading));
  });
}

/** Tells what has happened since the clock was read last in the same stage. */
function tell(before: Moment | undefined, now: Moment, stage: string, drivers: string): void {
  const same = before?.place === now.place ? before : undefined;
  if (now.over && same?.over !== true) say(said.stageOver(stage));
  else if (same !== undefined && now.round > same.round) say(said.swap(now.round, drivers));
  else return;
  sound();
  buzz();
}

function timeText({ left, round }: ClockReading, stage: string, drivers: string): string {
  if (round === undefined) {
    const shown = clockText(Math.abs(left));
    return left < 0 ? said.over(shown, stage) : said.left(shown, stage);
  }
  const shown = clockText(Math.abs(round.left));
  const time = round.left < 0 ? said.roundOver(shown) : said.roundLeft(shown);
  return said.round(round.round, round.of, drivers, time);
}

/** Who is out in the round at hand. */
function driversOf(day: Draft, { run }: SheetRow, { round }: ClockReading): string {
  if (round === undefined) return "";
  const { stints = [] } = roundsOn(day, run)[round.round - 1] ?? {};
  return stints.map(({ driver }) => driver).join(", ");
}

function behindText(minutes: number | undefined): string {
  if (minutes === undefined) return said.notBegun;
  const whole = Math.round(minutes);
  if (whole === 0) return said.onPlan;
  return whole > 0 ? said.behind(whole) : said.ahead(-whole);
}

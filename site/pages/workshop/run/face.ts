import { roundsOf, type SheetRow, stages } from "@rollbook/lib";
import { element } from "@rollbook/page";
import type { Draft } from "../day/draft.js";
import { say } from "../parts/notice.js";
import { words } from "../words.js";
import { type Clock, clockText, readClock } from "./clock.js";

const { run: said } = words;

/** The face of the clock and how the day stands against its plan. */
export interface Face {
  readonly time: HTMLElement;
  readonly behind: HTMLElement;
  /** Shows the clock as it is now; says once when the time of a stage is up. */
  show(clock: Clock, row: SheetRow, day: Draft): void;
}

export function clockFace(): Face {
  const time = element("p", { class: "clock" });
  const behind = element("p", { class: "quiet" });
  let told = "";
  return {
    time,
    behind,
    show(clock, row, day) {
      const reading = readClock(clock, row, roundsOf(day), Date.now());
      const stage = words.stages[stages[clock.stage] ?? "teach"];
      const shown = clockText(Math.abs(reading.left));
      time.textContent = reading.left < 0 ? said.over(shown, stage) : said.left(shown, stage);
      behind.textContent = behindText(reading.behind);
      const place = `${clock.run} ${clock.stage}`;
      if (reading.left >= 0 || clock.since === undefined || told === place) return;
      told = place;
      say(said.stageOver(stage));
    },
  };
}

function behindText(minutes: number | undefined): string {
  if (minutes === undefined) return said.notBegun;
  const whole = Math.round(minutes);
  if (whole === 0) return said.onPlan;
  return whole > 0 ? said.behind(whole) : said.ahead(-whole);
}

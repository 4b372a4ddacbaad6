import { computed, signal } from "@preact/signals";
import { asClock, type Clock, readClock, type SheetRow, stoppedClock } from "@rollbook/lib";
import { documentOf } from "@rollbook/page";
import { isTyping } from "../../../ui/work-at-rest.js";
import type { Draft } from "../day/draft.js";
import { theDay } from "../day/open-day.js";
import { worked } from "../day/worked.js";

/** Where the day stands. */
export const clock = documentOf({ key: "workshop/clock", empty: stoppedClock, read: asClock });
export const setClock = (changed: Clock): void => void clock.set(changed);

/** The second that it is, ms since 1970, for what shows the time. */
export const second = signal(Date.now());

/** The day, its runs and the run at hand. */
export interface AtHand {
  readonly day: Draft;
  readonly rows: readonly SheetRow[];
  readonly row: SheetRow;
  /** Every car of the plan in this run. */
  readonly cars: readonly CarAtHand[];
}

/** One car of the plan in the run at hand. */
export interface CarAtHand {
  /** 1 is the first car, and all that are like it. */
  readonly car: number;
  readonly row: SheetRow;
}

let last: AtHand | undefined;

/** What is at hand; nothing where no day is open, or none that can be worked out. While somebody types it waits. */
export const atHand = computed((): AtHand | undefined => {
  if (!isTyping.value) last = findAtHand();
  return last;
});

function findAtHand(): AtHand | undefined {
  const day = theDay();
  const { rows = [], sheets = [] } = day === undefined ? {} : worked(day);
  const { run } = clock.now.value;
  const row = rows[run - 1] ?? rows[0];
  if (day === undefined || row === undefined) return undefined;
  const cars = sheets.flatMap(({ car, rows: own }) => {
    const at = own[row.run - 1];
    return at === undefined ? [] : [{ car, row: at }];
  });
  return { day, rows, row, cars };
}

/** The clock, of a run that the plan has. */
export const clockAt = ({ row }: AtHand): Clock =>
  clock.now.value.run === row.run ? clock.now.value : stoppedClock;

/** What the clock shows at this second. */
export const readingOf = (at: AtHand) => readClock(clockAt(at), at.row, second.value);

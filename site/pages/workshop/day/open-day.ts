import type { EventEntry } from "@rollbook/lib";
import { documentOf } from "@rollbook/page";
import { theLog, write } from "../../../store/log.js";
import {
  asDraft,
  canFile,
  type Draft,
  daysOf,
  draftOf,
  eventToFile,
  isFiled,
  setUpToFile,
} from "./draft.js";
import { forgetHalfTyped } from "./half-typed.js";

const kept = documentOf<Draft | undefined>({
  key: "workshop/draft",
  empty: undefined,
  read: (value) => (value === undefined || value === null ? undefined : asDraft(value)),
});

/** The day that is open, if any, to be followed. */
export const dayNow = kept.now;
export const theDay = (): Draft | undefined => kept.now.value;

/** Opens the day that was open last, else the latest of the log. */
export function reopenDay(): void {
  const [latest] = daysOf(theLog());
  const filed = latest && draftOf(latest, theLog());
  if (theDay() === undefined && filed !== undefined) change(filed);
}

/** Changes the open day; it is kept at once and filed later. */
export const change = (changed: Draft): void => void kept.setTyped(changed);

/** Changes the open day, where one is, as it is now. */
export function edit(with_: (day: Draft) => Draft): void {
  const day = theDay();
  if (day !== undefined) change(with_(day));
}

/** Opens another day; what was not filed of the one before is filed first. */
export function openDay(day: Draft): void {
  const before = theDay();
  if (before !== undefined && canFile(before)) fileDay();
  forgetHalfTyped();
  change(day);
}

export function openFiled(event: EventEntry): boolean {
  const found = draftOf(event, theLog());
  if (found !== undefined) openDay(found);
  return found !== undefined;
}

/** Files the open day in the log, where it says something new; gives the day as filed. */
export function fileDay(): Draft | undefined {
  const draft = theDay();
  if (draft === undefined || !canFile(draft)) return undefined;
  if (isFiled(draft, theLog())) return draft;
  const setUp = setUpFiled(draft);
  const others = draft.others?.map((other) => ({ ...other, setUp: setUpFiled(other) }));
  const cast = { ...draft, setUp, ...(others && { others }) };
  const event = eventToFile(cast, setUp, theLog());
  const id = event === undefined ? draft.event : write(event).id;
  const filed = { ...cast, ...(id !== undefined && { event: id }) };
  change(filed);
  return filed;
}

/** The set-up of a car as it is filed; now, where it was not. */
function setUpFiled(one: Pick<Draft, "car" | "setUp">): string {
  const body = setUpToFile(one, theLog());
  return body === undefined ? (one.setUp ?? "") : write(body).id;
}

import type { EventEntry } from "@rollbook/lib";
import { keepState, recallState } from "../keeping/kept-state.js";
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
import { theLog, write } from "./logbook.js";

let draft: Draft | undefined;
const listeners = new Set<() => void>();
const refusals = new Set<() => void>();

/** The day that is open, if any. */
export const theDay = (): Draft | undefined => draft;

/** Calls whenever the open day is another one or has changed. */
export const onDay = (listener: () => void): void => void listeners.add(listener);
/** Calls where the device did not keep the draft. */
export const onDraftRefused = (listener: () => void): void => void refusals.add(listener);

/** Opens the day that was open last, else the latest of the log. */
export async function reopenDay(): Promise<void> {
  const kept = await recallState("draft", (value) => asDraft(value));
  const [latest] = daysOf(theLog());
  set(kept ?? (latest && draftOf(latest, theLog())));
}

/** Changes the open day; it is kept at once and filed later. */
export function change(changed: Draft): void {
  set(changed);
  void keepState("draft", changed).then((kept) => {
    if (!kept) for (const refused of refusals) refused();
  });
}

/** Opens another day; what was not filed of the one before is filed first. */
export function openDay(day: Draft): void {
  if (draft !== undefined && canFile(draft)) fileDay();
  change(day);
}

export function openFiled(event: EventEntry): boolean {
  const found = draftOf(event, theLog());
  if (found !== undefined) openDay(found);
  return found !== undefined;
}

/** Files the open day in the log, where it says something new; gives the day as filed. */
export function fileDay(): Draft | undefined {
  if (draft === undefined || !canFile(draft)) return undefined;
  if (isFiled(draft, theLog())) return draft;
  const body = setUpToFile(draft, theLog());
  const setUp = body === undefined ? (draft.setUp ?? "") : write(body).id;
  const event = eventToFile(draft, setUp, theLog());
  const id = event === undefined ? draft.event : write(event).id;
  change({ ...draft, setUp, ...(id !== undefined && { event: id }) });
  return draft;
}

/** Closes the day without filing, when all is forgotten. */
export const closeDay = (): void => set(undefined);

function set(day: Draft | undefined): void {
  draft = day;
  for (const listener of listeners) listener();
}

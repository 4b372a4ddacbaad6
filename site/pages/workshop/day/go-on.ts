import { asClock, entriesOfDay, nowStandingFor } from "@rollbook/lib";
import { dayNamedIn, dayText, howFarIn } from "../../../hand-over/log-text.js";
import { theLog } from "../../../store/log.js";
import { clock, setClock } from "../run/state.js";
import { asVote, vote } from "../run/vote-state.js";
import { change, fileDay, openFiled, theDay } from "./open-day.js";
import { filedDay } from "./reporter.js";

/** The open day as one file, filed first: its cars, plan, entries, clock and votes. Nothing where none can be filed. */
export function wholeDay(): { readonly name: string; readonly text: string } | undefined {
  fileDay();
  const event = filedDay();
  if (event === undefined) return undefined;
  const howFar = { clock: clock.now.value, vote: vote.now.value };
  const { entries } = entriesOfDay(theLog(), event);
  return { name: event.name, text: dayText(entries, event, howFar) };
}

/**
 * Opens the day of a file that was taken in and goes on where it stood.
 *
 * @returns its name and a way back; nothing where the file is no whole day
 */
export function goOn(
  text: string,
): { readonly name: string; readonly back: () => void } | undefined {
  const howFar = howFarIn(text);
  const event = nowStandingFor(theLog(), "event", dayNamedIn(text)?.id ?? "");
  if (howFar === undefined || event === undefined) return undefined;
  const [day, time, asked] = [theDay(), clock.now.value, vote.now.value];
  if (!openFiled(event)) return undefined;
  const [stood, put] = [asClock(howFar.clock), asVote(howFar.vote)];
  if (stood !== undefined) setClock(stood);
  if (put !== undefined) void vote.set(put);
  const back = () => {
    if (day !== undefined) change(day);
    setClock(time);
    void vote.set(asked);
  };
  return { name: event.name, back };
}

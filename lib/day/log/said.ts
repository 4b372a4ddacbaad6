import type { Log, NoteEntry, PollEntry, PredictionEntry } from "./log.js";
import { standing } from "./standing.js";

/** What somebody said about a run or a day, beside reports. */
export type SaidEntry = PredictionEntry | PollEntry | NoteEntry;

/** Predictions, votes and notes that count, by time. */
export function saidIn(log: Log): SaidEntry[] {
  const entries = [
    ...standing(log, "prediction"),
    ...standing(log, "poll"),
    ...standing(log, "note"),
  ];
  return entries.sort((a, b) => (a.at < b.at ? -1 : 1));
}

import { type RoadState, roadStates } from "@rollbook/lib";
import { documentOf, textUnder } from "@rollbook/page";

/** A note that is not in the log yet. */
export const note = textUnder("workshop/log-note");
/** What was pasted and not taken in yet. */
export const pasted = textUnder("workshop/log-pasted");

/** What is being written of a run: its entry, and the fields as they stand. */
export interface RunDraft {
  readonly of: string;
  readonly road?: RoadState;
  readonly conditions: string;
  readonly laps: string;
}

function asRunDraft(kept: unknown): RunDraft | undefined {
  const { of, conditions, laps, ...more } = (kept ?? {}) as Record<string, unknown>;
  if (typeof of !== "string" || typeof conditions !== "string" || typeof laps !== "string")
    return undefined;
  const road = roadStates.find((state) => state === more.road);
  return { of, conditions, laps, ...(road && { road }) };
}

export const runDraft = documentOf<RunDraft | undefined>({
  key: "workshop/log-run",
  empty: undefined,
  read: asRunDraft,
});

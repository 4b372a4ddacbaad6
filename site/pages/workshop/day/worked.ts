import type { Round } from "@rollbook/lib";
import { theLog } from "../../../store/log.js";
import type { Draft } from "./draft.js";
import * as out from "./worked-out.js";

export type { Worked } from "./worked-out.js";

/** The plan worked out as the day is by the log of this device. */
export const worked = (day: Draft): out.Worked => out.workedOut(day, theLog());

/** What of a day, and of its log, the model works with. */
export const inputOf = (day: Draft): string => out.inputOf(day, theLog());

/** Who drives when in a run of the day, as filed where it was begun. */
export const roundsOn = (day: Draft, run: number): Round[] => out.roundsOn(day, run, theLog());

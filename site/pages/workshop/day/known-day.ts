import type { PlanStep, Venue } from "@rollbook/lib";
import { theLog } from "../../../store/log.js";
import { daysOf } from "./draft.js";
import { theDay } from "./open-day.js";

/** What a report form needs to know of a day. */
export interface KnownDay {
  readonly venue: Venue;
  readonly drivers: readonly string[];
  readonly steps: readonly PlanStep[];
}

/** The open day; on a phone that has no car of it, the latest day that was handed to it. */
export const knownDay = (): KnownDay | undefined => theDay() ?? daysOf(theLog())[0];

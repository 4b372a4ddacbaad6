import type { EventEntry, PlanStep, Venue } from "@rollbook/lib";
import { theLog } from "../../../store/log.js";
import { isPhone } from "../paddock/place.js";
import { daysOf } from "./draft.js";
import { theDay } from "./open-day.js";
import { filedDay } from "./reporter.js";

/** What a report form needs to know of a day. */
interface KnownDay {
  readonly venue: Venue;
  readonly drivers: readonly string[];
  readonly steps: readonly PlanStep[];
}

/** The open day; on a phone that has no car of it, the desk's, or the latest day that was handed to it. */
export const knownDay = (): KnownDay | undefined =>
  isPhone() ? eventKnown() : (theDay() ?? daysOf(theLog())[0]);

/** The day as the log has it: the open one, else the latest that was handed to this device. */
export const eventKnown = (): EventEntry | undefined => filedDay() ?? daysOf(theLog())[0];

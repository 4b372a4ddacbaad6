import {
  type EventEntry,
  entriesOfDay,
  type Log,
  type LogEntry,
  standing as standingEntries,
} from "@rollbook/lib";
import { deviceName } from "../../../store/device-name.js";
import type { Member } from "./place.js";

/** What a driver's phone hands in. */
const kindsOfPhone: readonly LogEntry["kind"][] = [
  "run",
  "report",
  "prediction",
  "vote",
  "withdrawal",
];

/**
 * What of a log belongs at the desk: of a phone what it wrote itself since the day was filed or it
 * joined; of a desk all of its day.
 *
 * @param open - the day that is open at the desk
 */
export function forDesk(
  log: Log,
  member: Member,
  open: EventEntry | undefined,
): readonly LogEntry[] {
  if (member.role === "desk") return open === undefined ? [] : entriesOfDay(log, open).entries;
  const days = standingEntries(log, "event").map(({ at }) => at);
  const since = [...days, member.at].sort()[0] ?? "";
  return log.entries.filter(
    ({ id, kind, at }) => id.startsWith(deviceName) && kindsOfPhone.includes(kind) && at >= since,
  );
}

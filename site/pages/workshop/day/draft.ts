import {
  type Car,
  canonical,
  carFromJson,
  type EventEntry,
  type Log,
  nowStandingFor,
  type Plan,
  readEntry,
  type SetUpEntry,
  standing,
  type Venue,
} from "@rollbook/lib";

/** A day as it is being planned; it may differ from what is filed in the log. */
export interface Draft extends Plan {
  readonly name: string;
  readonly drivers: readonly string[];
  readonly cars: number;
  /** The filed version that it was taken from. */
  readonly event?: string;
  /** The filed set-up of its car. */
  readonly setUp?: string;
}

/** A day that nobody has planned yet. */
export function newDraft(car: Car, words: { name: string; venue: Venue; driver: string }): Draft {
  const { name, venue, driver } = words;
  return { name, car, venue, minutes: 240, drivers: [driver], cars: 1, steps: [] };
}

/** The filed day as a draft; nothing where its car is not in the log. */
export function draftOf(event: EventEntry, log: Log): Draft | undefined {
  const setUp = nowStandingFor(log, "set-up", event.setUp);
  if (setUp === undefined) return undefined;
  const { name, venue, minutes, drivers, cars, steps } = event;
  const day = { name, venue, minutes, drivers, cars, steps };
  return { ...day, car: setUp.car, event: event.id, setUp: setUp.id };
}

type EventBody = Omit<EventEntry, "id" | "at" | "author">;
type SetUpBody = Omit<SetUpEntry, "id" | "at" | "author">;

/** The car of a draft as an entry, where the log does not have it yet. */
export function setUpToFile({ car, setUp }: Draft, log: Log): SetUpBody | undefined {
  const filed = setUp === undefined ? undefined : nowStandingFor(log, "set-up", setUp);
  if (filed !== undefined && canonical(filed.car) === canonical(car)) return undefined;
  return { kind: "set-up", car };
}

/** The day of a draft as an entry that stands for the version before it; nothing where that says the same. */
export function eventToFile(draft: Draft, setUp: string, log: Log): EventBody | undefined {
  const { name, venue, minutes, drivers, cars, steps, event } = draft;
  const body = { kind: "event" as const, name, venue, minutes, drivers, cars, steps, setUp };
  const filed = event === undefined ? undefined : nowStandingFor(log, "event", event);
  if (filed === undefined) return body;
  const { id, at: _at, author: _author, replaces: _, ...old } = filed;
  if (canonical(old) === canonical(body)) return undefined;
  return { ...body, replaces: id };
}

/** Whether the log says the same as the draft. */
export function isFiled(draft: Draft, log: Log): boolean {
  const { setUp } = draft;
  if (setUp === undefined || setUpToFile(draft, log) !== undefined) return false;
  return eventToFile(draft, setUp, log) === undefined;
}

/** Whether a draft can be filed: a day has a driver and at least one run. */
export const canFile = ({ drivers, steps }: Draft): boolean =>
  drivers.length > 0 && steps.length > 0;

/** The days of a log, the latest first. */
export const daysOf = (log: Log): EventEntry[] => standing(log, "event").reverse();

/** Reads a draft from what the device kept; nothing where it is not sound. */
export function asDraft(value: unknown): Draft | undefined {
  const { car, event, setUp, ...day } = (value ?? {}) as Record<string, unknown>;
  const read = carFromJson(car).car;
  const steps =
    Array.isArray(day.steps) && day.steps.length > 0 ? day.steps : [{ kind: "baseline" }];
  const head = { kind: "event", id: "draft-1", at: "2000-01-01T00:00:00.000Z", setUp: "" };
  const { entry } = readEntry({ ...day, ...head, steps });
  if (read === undefined || entry?.kind !== "event") return undefined;
  const { name, venue, minutes, drivers, cars } = entry;
  const kept = Array.isArray(day.steps) && day.steps.length === 0 ? [] : entry.steps;
  return {
    ...{ name, car: read, venue, minutes, drivers, cars, steps: kept },
    ...(typeof event === "string" && { event }),
    ...(typeof setUp === "string" && { setUp }),
  };
}

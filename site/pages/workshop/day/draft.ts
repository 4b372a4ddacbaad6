import {
  type Car,
  canonical,
  carFromJson,
  type DayPlan,
  type EventEntry,
  type Log,
  nowStandingFor,
  type OtherCarPlan,
  readEntry,
  type SetUpEntry,
  standing,
  type Venue,
} from "@rollbook/lib";

/** A car of a draft that is not like the first. */
export interface OtherCarDraft extends OtherCarPlan {
  /** The filed set-up of the car. */
  readonly setUp?: string;
}

/** A day as it is being planned; it may differ from what is filed in the log. */
export interface Draft extends DayPlan {
  readonly others?: readonly OtherCarDraft[];
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

/** The filed day as a draft; nothing where one of its cars is not in the log. */
export function draftOf(event: EventEntry, log: Log): Draft | undefined {
  const setUp = nowStandingFor(log, "set-up", event.setUp);
  if (setUp === undefined) return undefined;
  const { name, venue, minutes, drivers, cars, steps, usual, swap, others } = event;
  const day = { name, venue, minutes, drivers, cars, steps };
  const more = { ...(usual && { usual }), ...(swap !== undefined && { swap }) };
  const cast = others?.map((other) => {
    const own = nowStandingFor(log, "set-up", other.setUp);
    return own && { ...other, car: own.car, setUp: own.id };
  });
  if (cast?.includes(undefined)) return undefined;
  const own = cast as readonly OtherCarDraft[] | undefined;
  return {
    ...{ ...day, ...more, ...(own && { others: own }) },
    ...{ car: setUp.car, event: event.id, setUp: setUp.id },
  };
}

/** The set-up that the runs of a car of the plan start from. */
export const rootSetUp = ({ setUp, others = [] }: EventEntry, car: number): string =>
  others.find(({ carNumber }) => carNumber === car)?.setUp ?? setUp;

type EventBody = Omit<EventEntry, "id" | "at" | "author">;
type SetUpBody = Omit<SetUpEntry, "id" | "at" | "author">;

/** A car of a draft as an entry, where the log does not have it yet. */
export function setUpToFile(
  { car, setUp }: Pick<Draft, "car" | "setUp">,
  log: Log,
): SetUpBody | undefined {
  const filed = setUp === undefined ? undefined : nowStandingFor(log, "set-up", setUp);
  if (filed !== undefined && canonical(filed.car) === canonical(car)) return undefined;
  return { kind: "set-up", car };
}

/**
 * The day of a draft as an entry that stands for the version before it; nothing where that says the
 * same. Every car that is not like the first has its set-up filed by then.
 */
export function eventToFile(draft: Draft, setUp: string, log: Log): EventBody | undefined {
  const { name, venue, minutes, drivers, cars, steps, event, usual, swap, others } = draft;
  const own = others?.map(({ carNumber, setUp: of = "", steps, changeMinutes }) => ({
    ...{ carNumber, setUp: of, steps },
    ...(changeMinutes !== undefined && { changeMinutes }),
  }));
  const body = {
    ...{ kind: "event" as const, name, venue, minutes, drivers, cars, steps, setUp },
    ...(usual && { usual }),
    ...(swap !== undefined && { swap }),
    ...(own && own.length > 0 && { others: own }),
  };
  const filed = event === undefined ? undefined : nowStandingFor(log, "event", event);
  if (filed === undefined) return body;
  const { id, at: _at, author: _author, replaces: _, ...old } = filed;
  if (canonical(old) === canonical(body)) return undefined;
  return { ...body, replaces: id };
}

/** Whether the log says the same as the draft. */
export function isFiled(draft: Draft, log: Log): boolean {
  const { setUp, others = [] } = draft;
  if (setUp === undefined || others.some((other) => other.setUp === undefined)) return false;
  if ([draft, ...others].some((one) => setUpToFile(one, log) !== undefined)) return false;
  return eventToFile(draft, setUp, log) === undefined;
}

/** Whether a draft can be filed: a day has a driver and at least one run. */
export const canFile = ({ drivers, steps }: Draft): boolean =>
  drivers.length > 0 && steps.length > 0;

/** The days of a log, the latest first. */
export const daysOf = (log: Log): EventEntry[] => standing(log, "event").reverse();

/** Reads a draft from what the device kept; nothing where it is not sound. */
export function asDraft(value: unknown): Draft | undefined {
  const { car, event, setUp, others, ...day } = (value ?? {}) as Record<string, unknown>;
  const read = carFromJson(car).car;
  const cast = Array.isArray(others) ? others.map(asOther) : [];
  const steps =
    Array.isArray(day.steps) && day.steps.length > 0 ? day.steps : [{ kind: "baseline" }];
  const head = { kind: "event", id: "draft-1", at: "2000-01-01T00:00:00.000Z", setUp: "" };
  const { entry } = readEntry({
    ...{ ...day, ...head, steps },
    ...(cast.length > 0 && { others: cast.map(withoutCar) }),
  });
  if (read === undefined || entry?.kind !== "event" || cast.includes(undefined)) return undefined;
  const { name, venue, minutes, drivers, cars, usual, swap } = entry;
  const kept = Array.isArray(day.steps) && day.steps.length === 0 ? [] : entry.steps;
  return {
    ...{ name, car: read, venue, minutes, drivers, cars, steps: kept },
    ...(usual && { usual }),
    ...(swap !== undefined && { swap }),
    ...(cast.length > 0 && { others: cast as readonly OtherCarDraft[] }),
    ...(typeof event === "string" && { event }),
    ...(typeof setUp === "string" && { setUp }),
  };
}

/** Another car as it was kept; its runs are looked at with those of the day. */
function asOther(value: unknown): OtherCarDraft | undefined {
  const { car, ...other } = (value ?? {}) as Record<string, unknown>;
  const read = carFromJson(car).car;
  return read && { ...(other as unknown as OtherCarDraft), car: read };
}

const withoutCar = (other: OtherCarDraft | undefined) => {
  const { car: _, setUp = "", ...rest } = other ?? {};
  return { ...rest, setUp };
};

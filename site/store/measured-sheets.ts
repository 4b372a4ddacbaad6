import type { Certainty } from "@rollbook/lib";
import { isTyped, type Typed } from "./car-draft.js";

/** When and by whom something was read. */
export interface Stamp {
  /** YYYY-MM-DD */
  readonly when: string;
  readonly by: string;
}

/** Readings as they were typed, car by car. */
export interface Measurements {
  /** Who measures now. */
  readonly by: string;
  /** By name of the car, then by place on the page. */
  readonly sheets: Readonly<Record<string, Readonly<Record<string, Typed>>>>;
  /** By name of the car, then by form: when it was last typed at. */
  readonly read: Readonly<Record<string, Readonly<Record<string, Stamp>>>>;
  /** By name of the car, then by place in its file: numbers that it took over from what it learned. */
  readonly accepted: Readonly<Record<string, Readonly<Record<string, Accepted>>>>;
}

/** A number that a car took over, and what stood there before. */
export interface Accepted {
  readonly path: string;
  readonly value: number;
  readonly before: Before;
}

/** What stood at a place of a car file, and how sure it was; nothing where it was left out. */
export interface Before {
  readonly path: string;
  readonly value?: unknown;
  readonly known?: Certainty | undefined;
}

export const nothingMeasured: Measurements = { by: "", sheets: {}, read: {}, accepted: {} };

type Group = Readonly<Record<string, unknown>>;
const isGroup = (value: unknown): value is Group =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const isStamp = (value: unknown): value is Stamp =>
  isGroup(value) && typeof value.when === "string" && typeof value.by === "string";

const isAccepted = (value: unknown): value is Accepted =>
  isGroup(value) &&
  typeof value.path === "string" &&
  typeof value.value === "number" &&
  isGroup(value.before) &&
  value.before.path === value.path;

/** What of kept readings is sound, by car and place. */
function soundIn<Part>(
  kept: unknown,
  isSound: (part: unknown) => part is Part,
): Record<string, Record<string, Part>> {
  const cars = isGroup(kept) ? Object.entries(kept) : [];
  return Object.fromEntries(
    cars.map(([car, sheet]) => {
      const places = isGroup(sheet) ? Object.entries(sheet) : [];
      return [car, Object.fromEntries(places.filter(([, part]) => isSound(part)))];
    }),
  ) as Record<string, Record<string, Part>>;
}

/** Readings from the device's store; nothing where they are none. */
export function asMeasurements(kept: unknown): Measurements | undefined {
  if (!isGroup(kept)) return undefined;
  const { by, sheets, read, accepted } = kept;
  return {
    by: typeof by === "string" ? by : "",
    sheets: soundIn(sheets, isTyped),
    read: soundIn(read, isStamp),
    accepted: soundIn(accepted, isAccepted),
  };
}

/** The readings with something typed at a place of a car; left blank, nothing stands there. */
export function withReading(
  all: Measurements,
  car: string,
  place: string,
  typed: Typed,
): Measurements {
  const { [place]: _, ...others } = all.sheets[car] ?? {};
  const sheet = typed.text === "" ? others : { ...others, [place]: typed };
  return { ...all, sheets: { ...all.sheets, [car]: sheet } };
}

/** The readings with a note of who read a form, and when. */
export function withStamp(
  all: Measurements,
  car: string,
  form: string,
  stamp: Stamp,
): Measurements {
  return { ...all, read: { ...all.read, [car]: { ...all.read[car], [form]: stamp } } };
}

/** The readings with a note of a number that a car took over; without a value, that it gave it back. */
export function withAccepted(
  all: Measurements,
  car: string,
  path: string,
  accepted: Accepted | undefined,
): Measurements {
  const { [path]: _, ...others } = all.accepted[car] ?? {};
  const now = accepted === undefined ? others : { ...others, [path]: accepted };
  return { ...all, accepted: { ...all.accepted, [car]: now } };
}

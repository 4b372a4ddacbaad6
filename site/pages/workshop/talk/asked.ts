import { type Signal, signal } from "@preact/signals";
import {
  type Case,
  canonical,
  type Diagnosis,
  diagnose,
  type End,
  placesIn,
  Refusal,
  type Report,
  type ReportedPlace,
} from "@rollbook/lib";
import type { BandsSoFar } from "../../../bands/bands.js";
import type { Topic } from "./topic.js";

/** Ends at which hot pressures are off, as they can be answered. */
export const pressureOff = {
  unknown: undefined,
  right: [],
  front: ["front"],
  rear: ["rear"],
  both: ["front", "rear"],
} as const satisfies Record<string, readonly End[] | undefined>;
export type Pressure = keyof typeof pressureOff;

/** What to go by, as somebody chose it. */
export interface Choice {
  /** Keys of places. */
  readonly places: readonly string[];
  readonly pressure: Pressure;
}

interface Answered {
  readonly diagnosis: Diagnosis;
  /** The reports that it goes by. */
  readonly reports: readonly Report[];
}

/** A diagnosis that was worked out, or why it cannot be. */
export interface WorkedOut {
  /** The case that it was worked out from. */
  readonly given: Case;
  readonly answer: Answered | { readonly refusal: Refusal };
  /** How sure its proposals are, once that is known. */
  readonly bands: Signal<BandsSoFar | undefined>;
}

interface Asked {
  readonly choice?: Choice;
  readonly workedOut?: WorkedOut;
}

/** What was chosen and worked out in this visit, by topic. */
const asked = signal<Readonly<Record<string, Asked>>>({});

const keyOf = ({ event, run, car, driver = "" }: Topic): string =>
  canonical([event.setUp, run, car, driver]);

export const askedOf = (topic: Topic): Asked => asked.value[keyOf(topic)] ?? {};

/** The choice for a topic; before anybody chose, the place that asks for most. */
export const choiceFor = (topic: Topic, places: readonly ReportedPlace[]): Choice =>
  askedOf(topic).choice ?? {
    places: places.slice(0, 1).map(({ key }) => key),
    pressure: "unknown",
  };

function put(topic: Topic, more: Asked): void {
  asked.value = { ...asked.value, [keyOf(topic)]: { ...askedOf(topic), ...more } };
}

export const choose = (topic: Topic, choice: Choice): void => put(topic, { choice });

/** Works the next change out and keeps it; it takes a second or two. */
export function workOut(topic: Topic, given: Case, choice: Choice): WorkedOut {
  const bands = signal<BandsSoFar | undefined>(undefined);
  const workedOut = { given, answer: answerTo(given, choice), bands };
  put(topic, { workedOut });
  return workedOut;
}

function answerTo(given: Case, { places, pressure }: Choice): WorkedOut["answer"] {
  const reports = placesIn(given.reports)
    .filter(({ key }) => places.includes(key))
    .flatMap((place) => place.reports);
  const off = pressureOff[pressure];
  try {
    const complaint = { ...given, reports, ...(off && { pressureOff: off }) };
    return { diagnosis: diagnose(complaint), reports };
  } catch (error) {
    if (error instanceof Refusal) return { refusal: error };
    throw error;
  }
}

/** Whether the log now says otherwise than when it was worked out. */
export const isOutdated = ({ given }: WorkedOut, now: Case): boolean =>
  given !== now && canonical(given) !== canonical(now);

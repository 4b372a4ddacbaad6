import { inShort } from "../../car/file/in-short.js";
import { deeperThan } from "../../car/file/json.js";
import { carFromJson } from "../../car/file/parse.js";
import { validatorOf } from "../../car/file/validate.js";
import { carLenses } from "../../change/levers.js";
import { faultsOfVenue } from "../plan/venue-file.js";
import { broughtForward } from "./bring-forward.js";
import {
  type EntryKind,
  entryKinds,
  type HappeningEntry,
  type HappeningKind,
  isEntryKind,
  type LogEntry,
} from "./log.js";
import { entryShapes, headShape } from "./log-shape.js";

/** An entry that was read, or all that is wrong with it. */
export type ReadEntry =
  | { readonly entry: LogEntry; readonly faults?: undefined }
  | { readonly entry?: undefined; readonly faults: readonly string[] };

const faultsOfKind = Object.fromEntries(
  entryKinds.map((kind) => [kind, validatorOf(entryShapes[kind])]),
) as Record<EntryKind, (value: unknown) => string[]>;
const faultsOfHead = validatorOf(headShape);

/**
 * Reads one entry of a log, of this version or an older one; of a kind that is not known only what
 * every entry has is looked at. Never throws: each fault is one sentence with field and value.
 */
export function readEntry(value: unknown): ReadEntry {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return { faults: ["An entry must be a group of fields."] };
  if (deeperThan(value, DEEPEST)) return { faults: [`is nested deeper than ${DEEPEST}.`] };
  const { kind, author } = value as { kind?: unknown; author?: unknown };
  const known = isEntryKind(kind);
  if (!known && (author === undefined || typeof kind !== "string" || !KIND.test(kind)))
    return { faults: [unknownKind(kind)] };
  const now = broughtForward(value as Readonly<Record<string, unknown>>);
  const faults = known ? faultsOfKind[kind](now) : faultsOfHead(now);
  if (faults.length > 0) return { faults };
  const entry = now as unknown as LogEntry; // every field of its kind was checked, others are kept
  const more = [...headFaults(entry), ...partFaults(entry)];
  if (more.length > 0) return { faults: more };
  return entry.kind === "set-up" ? withCar(entry) : { entry };
}

function unknownKind(kind: unknown): string {
  return `kind is ${inShort(kind)} but must be one of: ${entryKinds.join(", ")}.`;
}

const DEEPEST = 60; // parts inside parts, far above any entry
const KIND = /^[a-z][a-z0-9-]{0,39}$/;
const ID = /^[a-z0-9]{2,16}-[1-9][0-9]{0,8}$/;
const TIME = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/;

function headFaults({ id, at, replaces }: LogEntry): string[] {
  const ofId = ID.test(id)
    ? []
    : [`id is ${inShort(id)} but must be like "k3f9-12": a device, a dash, a number.`];
  const isTime = TIME.test(at) && !Number.isNaN(Date.parse(at));
  const ofTime = isTime
    ? []
    : [`at is ${inShort(at)} but must be a time like "2031-05-04T09:12:33.000Z".`];
  const ofItself = replaces === id ? [`replaces is ${inShort(id)}, the entry itself.`] : [];
  return [...ofId, ...ofTime, ...ofItself];
}

function partFaults(entry: LogEntry): string[] {
  if (entry.kind === "happening") return happeningFaults(entry);
  if (entry.kind !== "event") return [];
  const venue = faultsOfVenue(entry.venue).map((fault) => `venue.${fault}`);
  const others = (entry.others ?? []).flatMap(({ steps }, i) => stepsFaults(steps, `others.${i}.`));
  return [...venue, ...stepsFaults(entry.steps, ""), ...others];
}

type Step = { readonly kind: string; readonly change?: object };

/** A change step needs its change, and a lever its end. */
const stepsFaults = (steps: readonly Step[], path: string): string[] =>
  steps.flatMap(({ kind, change }, i) =>
    kind === "change" ? changeFaults(change, `${path}steps.${i}.change`) : [],
  );

function changeFaults(change: object | undefined, path: string): string[] {
  if (change === undefined) return [`${path} is missing.`];
  const { lever, end } = change as { lever: string; end?: string };
  const ofCar = Object.hasOwn(carLenses, lever);
  if (ofCar === (end === undefined)) return [];
  return [`${path}.end is ${ofCar ? `"${end}" but ${lever} has none` : "missing"}.`];
}

/** What a happening cannot do without. */
const neededFor: Readonly<Partial<Record<HappeningKind, readonly (keyof HappeningEntry)[]>>> = {
  "other change": ["change"],
  weather: ["conditions"],
  "driver left": ["driver"],
  "driver joined": ["driver"],
  "drivers swapped": ["driver", "other"],
  break: ["minutes"],
};

function happeningFaults(entry: HappeningEntry): string[] {
  const needed = neededFor[entry.what] ?? [];
  const missing = needed.filter((field) => entry[field] === undefined);
  const ofChange = entry.what === "other change" && entry.change !== undefined;
  return [
    ...missing.map((field) => `${field} is missing.`),
    ...(ofChange ? changeFaults(entry.change, "change") : []),
  ];
}

function withCar(entry: Extract<LogEntry, { kind: "set-up" }>): ReadEntry {
  const read = carFromJson(entry.car);
  if (read.faults !== undefined) return { faults: read.faults.map((fault) => `car: ${fault}`) };
  return { entry: { ...entry, car: read.car } };
}

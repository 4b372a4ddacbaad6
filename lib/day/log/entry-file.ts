import { carFromJson } from "../../car/file/parse.js";
import { validatorOf } from "../../car/file/validate.js";
import { carLenses } from "../../change/levers.js";
import { faultsOfVenue } from "../plan/venue-file.js";
import type { EntryKind, LogEntry } from "./log.js";
import { entryShapes } from "./log-shape.js";

/** An entry that was read, or all that is wrong with it. */
export type ReadEntry =
  | { readonly entry: LogEntry; readonly faults?: undefined }
  | { readonly entry?: undefined; readonly faults: readonly string[] };

const kinds = Object.keys(entryShapes) as EntryKind[];
const faultsOfKind = Object.fromEntries(
  kinds.map((kind) => [kind, validatorOf(entryShapes[kind])]),
) as Record<EntryKind, (value: unknown) => string[]>;

/** Reads one entry of a log. Never throws: each fault is one sentence with field and value. */
export function readEntry(value: unknown): ReadEntry {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return { faults: ["An entry must be a group of fields."] };
  const { kind } = value as { kind?: unknown };
  if (!isKind(kind)) return { faults: [unknownKind(kind)] };
  const faults = faultsOfKind[kind](value);
  if (faults.length > 0) return { faults };
  const entry = value as LogEntry; // every field of its kind was checked, others are kept
  const more = [...headFaults(entry), ...partFaults(entry)];
  if (more.length > 0) return { faults: more };
  return entry.kind === "set-up" ? withCar(entry) : { entry };
}

function isKind(kind: unknown): kind is EntryKind {
  return kinds.some((known) => known === kind);
}

function unknownKind(kind: unknown): string {
  return `kind is ${JSON.stringify(kind) ?? "missing"} but must be one of: ${kinds.join(", ")}.`;
}

const ID = /^[a-z0-9]{2,16}-[1-9][0-9]{0,8}$/;
const TIME = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/;

function headFaults({ id, at, replaces }: LogEntry): string[] {
  const ofId = ID.test(id)
    ? []
    : [`id is ${JSON.stringify(id)} but must be like "k3f9-12": a device, a dash, a number.`];
  const isTime = TIME.test(at) && !Number.isNaN(Date.parse(at));
  const ofTime = isTime
    ? []
    : [`at is ${JSON.stringify(at)} but must be a time like "2031-05-04T09:12:33.000Z".`];
  const ofItself = replaces === id ? [`replaces is ${JSON.stringify(id)}, the entry itself.`] : [];
  return [...ofId, ...ofTime, ...ofItself];
}

function partFaults(entry: LogEntry): string[] {
  if (entry.kind !== "event") return [];
  const venue = faultsOfVenue(entry.venue).map((fault) => `venue.${fault}`);
  return [...venue, ...entry.steps.flatMap(stepFaults)];
}

/** A change step needs its change, and a lever its end. */
function stepFaults(step: { kind: string; change?: object }, i: number): string[] {
  if (step.kind !== "change") return [];
  if (step.change === undefined) return [`steps.${i}.change is missing.`];
  const { lever, end } = step.change as { lever: string; end?: string };
  const ofCar = Object.hasOwn(carLenses, lever);
  if (ofCar === (end === undefined)) return [];
  return [`steps.${i}.change.end is ${ofCar ? `"${end}" but ${lever} has none` : "missing"}.`];
}

function withCar(entry: Extract<LogEntry, { kind: "set-up" }>): ReadEntry {
  const read = carFromJson(entry.car);
  if (read.faults !== undefined) return { faults: read.faults.map((fault) => `car: ${fault}`) };
  return { entry: { ...entry, car: read.car } };
}

import type { Content, Path } from "@rollbook/lib";
import type { UnitSystem } from "../say/units.js";

/** What somebody typed into one place, as typed, and the units in which they did. */
export interface Typed {
  readonly text: string;
  readonly units: UnitSystem;
}

/** A car being worked on: what it was, and everything typed since, sound or not. */
export interface Draft {
  /** Its place in the list of drafts. */
  readonly id: string;
  /** Name of the kept car that it changes; left out for a car that is new. */
  readonly of?: string;
  readonly base: Content;
  readonly typed: Readonly<Record<Path, Typed>>;
  /** Places whose value the reader gave or confirmed, though it may be the demo car's. */
  readonly own: readonly Path[];
  /** Parts that were taken out, as they were. */
  readonly removed: Content;
}

/** A draft from the device's store, or undefined. */
export function asDraft(value: unknown): Draft | undefined {
  const { id, of, base, typed, own, removed } = (value ?? {}) as Partial<Draft>;
  if (typeof id !== "string" || typeof base !== "object" || base === null) return undefined;
  if (typeof typed !== "object" || typed === null || !Array.isArray(own)) return undefined;
  const entries = Object.entries(typed).filter(([, given]) => isTyped(given));
  return {
    id,
    ...(typeof of === "string" ? { of } : {}),
    base,
    typed: Object.fromEntries(entries),
    own: own.filter((path) => typeof path === "string"),
    removed: typeof removed === "object" && removed !== null ? removed : {},
  };
}

/** Whether something kept is what somebody typed. */
export function isTyped(given: unknown): given is Typed {
  const { text, units } = (given ?? {}) as Partial<Typed>;
  return typeof text === "string" && (units === "metric" || units === "us");
}

import type { Path } from "@rollbook/lib";
import { documentOf } from "@rollbook/page";
import { asDraft, type Draft } from "./car-draft.js";

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

function asDrafts(kept: unknown, aside: (draft: unknown) => void): Draft[] | undefined {
  if (!Array.isArray(kept)) return undefined;
  return kept.flatMap((one) => {
    const draft = asDraft(one);
    if (!draft) aside(one);
    return draft ?? [];
  });
}

/** Cars that are being typed. */
export const drafts = documentOf<readonly Draft[]>({
  key: "car-drafts",
  formerKey: "garage-drafts",
  empty: [],
  read: asDrafts,
});

/** Places of each car whose values the reader gave or confirmed. */
export const ownPlaces = documentOf<Record<string, unknown>>({
  key: "car-own",
  formerKey: "garage-own",
  empty: {},
  read: (kept) => (isRecord(kept) ? kept : undefined),
});

/** Keeps a draft in its place among the others, while it is typed; false where the device refused. */
export function keepDraft(draft: Draft): Promise<boolean> {
  const others = drafts.now.value;
  const known = others.some(({ id }) => id === draft.id);
  const all = known ? others.map((one) => (one.id === draft.id ? draft : one)) : [...others, draft];
  return drafts.setTyped(all);
}

/** Places of a car whose values the reader gave or confirmed. */
export function ownPlacesOf(name: string): Path[] {
  const own = ownPlaces.now.value[name];
  return Array.isArray(own) ? own.filter((path) => typeof path === "string") : [];
}

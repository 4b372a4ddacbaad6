import { signal } from "@preact/signals";
import {
  type FittedTyre,
  fitTyre,
  formatTyre,
  LONGEST_TYRE,
  type OwnTyre,
  parseTyre,
  Refusal,
  readTyreReadings,
  type TyreData,
  type TyreReading,
} from "@rollbook/lib";
import { forFileName, reader, saveFile, textUnder } from "@rollbook/page";
import { refusalInWords } from "../../../say/refusal.js";
import { tyreWords as words } from "../../../say/your-car/tyre.js";
import { say } from "../../../ui/notice.js";
import { confirmed, type Draft, withPart } from "../model/draft.js";
import { change } from "./doing.js";

/** What was pasted. */
export const pasted = textUnder("tyre-pasted");

/** What came of it: a tyre, with the fit where it was fitted; or what is wrong. */
export type TyreFound =
  | {
      readonly tyre: OwnTyre;
      readonly notes: readonly string[];
      readonly fit?: { readonly of: readonly TyreReading[]; readonly found: FittedTyre };
    }
  | { readonly faults: readonly string[] };

export const found = signal<TyreFound | undefined>(undefined);

export const takeCoefficients = (): void => {
  const read = parseTyre(pasted.now.value, words.ownName);
  found.value = read.faults === undefined ? read : { faults: read.faults };
};

export function fitForces(): void {
  const { readings, faults } = readTyreReadings(pasted.now.value);
  found.value = readings === undefined ? { faults: faults ?? [] } : fitOf(readings);
}

function fitOf(readings: readonly TyreReading[]): TyreFound {
  try {
    const fit = fitTyre(readings);
    const tyre = { name: words.fittedName, coefficients: fit.data };
    return { tyre, notes: [], fit: { of: readings, found: fit } };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { faults: [refusalInWords(error, reader)] };
  }
}

/** Takes the text of a file in place of what was pasted. */
export async function fromFile([file]: readonly File[]): Promise<void> {
  if (file === undefined) return;
  const text = file.size > 4 * LONGEST_TYRE ? undefined : await file.text().catch(() => undefined);
  if (text === undefined)
    found.value = { faults: [`${file.name}: ${LONGEST_TYRE} letters at most.`] };
  else void pasted.set(text);
}

export const tyreAsFile = (tyre: OwnTyre): void =>
  saveFile(`${forFileName(tyre.name, "tyre")}.tyre.json`, formatTyre(tyre));

/** Puts the tyre on an axle of the open car, or on both. */
export function putOn(where: "front" | "rear" | "both", { coefficients }: OwnTyre): void {
  const ends: readonly ("front" | "rear")[] = where === "both" ? ["front", "rear"] : [where];
  change((draft) => ends.reduce((now, end) => onEnd(now, end, coefficients), draft));
  say(words.done(words.where[where]));
}

function onEnd(draft: Draft, end: "front" | "rear", data: TyreData): Draft {
  const path = `${end}.tyre.name`;
  const { [path]: _, ...typed } = draft.typed;
  const named = withPart(confirmed({ ...draft, typed }, [path]), path, "own");
  return withPart(named, `${end}.tyre.data`, data);
}

/** What a page has to tell of the device: what it refused to keep, and what it keeps that cannot be read. */
import { type ReadonlySignal, signal } from "@preact/signals-core";

type ByKey<Value> = ReadonlyMap<string, Value>;

const refusedWrites = signal(0);
/** How many writes both copies have refused in this visit. */
export const refusals: ReadonlySignal<number> = refusedWrites;
/** Counts writes that were refused. */
export const countRefusals = (count: number): void => {
  refusedWrites.value += count;
};

const unkeptValues = signal<ByKey<unknown>>(new Map());
/** Values that both copies refused and that are held for this visit only, by the key of their document. */
export const unkept: ReadonlySignal<ByKey<unknown>> = unkeptValues;

/** Tells whether a document's value was kept. */
export function tellKept(key: string, kept: boolean, value?: unknown): void {
  if (!kept) countRefusals(1);
  if (!kept) unkeptValues.value = withKey(unkeptValues.value, key, value);
  else if (unkeptValues.value.has(key)) unkeptValues.value = without(unkeptValues.value, key);
}

const asides = signal<ByKey<readonly unknown[]>>(new Map());
/** What is kept but cannot be read, by the key of its document. */
export const keptAside: ReadonlySignal<ByKey<readonly unknown[]>> = asides;

/** Tells what of a document could not be read. */
export function tellAside(key: string, parts: readonly unknown[]): void {
  if (parts.length > 0) asides.value = withKey(asides.value, key, parts);
  else if (asides.value.has(key)) asides.value = without(asides.value, key);
}

const withKey = <Value>(map: ByKey<Value>, key: string, value: Value): ByKey<Value> =>
  new Map([...map, [key, value]]);

const without = <Value>(map: ByKey<Value>, key: string): ByKey<Value> =>
  new Map([...map].filter(([one]) => one !== key));

/** Version of every record; what a later course writes is kept aside, not read. */
export const VERSION = 1;

/** A value with its place in the order of writing; older courses took the time of day for it. */
export interface Stamped {
  readonly stamp: number;
  readonly version?: number;
  /** Left out: nothing. */
  readonly value?: unknown;
  /** Parts that could not be read. */
  readonly aside?: readonly unknown[];
}

/** What was kept as a record; older courses kept the bare value. */
export function stamped(kept: unknown): Stamped {
  const { stamp, version = VERSION, aside = [] } = (kept ?? {}) as Partial<Stamped>;
  const isRecord = typeof stamp === "number" && typeof version === "number" && Array.isArray(aside);
  return isRecord ? (kept as Stamped) : { stamp: 0, value: kept };
}

import { batch, type ReadonlySignal, signal } from "@preact/signals-core";
import { dropSecond, namesOfSecond, oneSecond, putSecond } from "./second-copy.js";
import { drop, keep, keptBelow, recall } from "./texts.js";

/** What the device is to remember: where, what it is before anything was kept, and how it is read. */
export interface Shape<Value> {
  readonly key: string;
  /** Where older courses kept it. */
  readonly formerKey?: string;
  readonly empty: Value;
  /** The value of what this course or an older one kept; nothing where it is not sound. */
  readonly read: (kept: unknown) => Value | undefined;
}

/** A value that the device remembers. Whoever reads `now` in a view is drawn again when it changes. */
export interface Document<Value> {
  readonly now: ReadonlySignal<Value>;
  /** Changes the value at once and keeps it in both copies; false where both were refused. */
  set(value: Value): Promise<boolean>;
  /** Forgets the value in both copies. */
  clear(): void;
  /** Looks at the second copy too, once: it may be newer, or all that is left. */
  open(): Promise<void>;
}

/** A value with its place in the order of writing; older courses took the time of day for it. */
interface Stamped {
  readonly stamp: number;
  readonly value: unknown;
}

const isStamped = (kept: unknown): kept is Stamped =>
  typeof kept === "object" &&
  kept !== null &&
  typeof (kept as Partial<Stamped>).stamp === "number" &&
  Object.hasOwn(kept, "value");

/** Documents of this visit by key, so that what another page writes or forgets is seen here. */
const known = new Map<string, { again(): void; clear(): void; open(): Promise<void> }>();

const refusedWrites = signal(0);
/** How many writes both copies have refused in this visit. */
export const refusals: ReadonlySignal<number> = refusedWrites;
/** Counts writes that a store of another shape refused. */
export const countRefusals = (count: number): void => {
  refusedWrites.value += count;
};

/** A value under its key; asked for twice it is the same one. */
export function documentOf<Value>({ key, formerKey, empty, read }: Shape<Value>): Document<Value> {
  const stampedFrom = (kept: unknown) => {
    const { stamp, value } = isStamped(kept) ? kept : { stamp: 0, value: kept };
    const sound = read(value);
    return sound === undefined ? undefined : { stamp, value: sound };
  };
  const first = () =>
    recall(key, stampedFrom) ??
    (formerKey === undefined ? undefined : recall(formerKey, stampedFrom));
  let at = first() ?? { stamp: 0, value: empty };
  let opened: Promise<void> | undefined;
  const now = signal(at.value);
  const be = (next: typeof at) => {
    at = next;
    now.value = at.value;
  };
  const take = (other: typeof at | undefined) => {
    if (other !== undefined && other.stamp > at.stamp) be(other);
  };
  const open = async () => take(textAs(await oneSecond(key), stampedFrom));
  const openOnce = () => {
    opened ??= open();
    return opened;
  };
  known.set(key, {
    again: () => take(first()),
    clear: () => be({ ...at, value: empty }),
    open: openOnce,
  });
  return {
    now,
    open: openOnce,
    async set(value) {
      be({ stamp: Math.max(at.stamp, first()?.stamp ?? 0) + 1, value });
      const text = JSON.stringify(at);
      const inFirst = keep(key, at);
      const inSecond = await putSecond(new Map([[key, text]]));
      if (!inFirst && !inSecond) refusedWrites.value += 1;
      return inFirst || inSecond;
    },
    clear() {
      be({ ...at, value: empty });
      for (const name of [key, ...(formerKey ? [formerKey] : [])]) drop(name);
      void dropSecond([key]);
    },
  };
}

function textAs<Value>(text: string | undefined, accept: (kept: unknown) => Value | undefined) {
  try {
    return text === undefined ? undefined : accept(JSON.parse(text));
  } catch {
    return undefined;
  }
}

/** Looks at the second copies of all documents of this page whose key begins so. */
export async function openAll(prefix: string): Promise<void> {
  const asked = [...known].filter(([key]) => key.startsWith(prefix));
  await Promise.all(asked.map(([, one]) => one.open()));
}

/** Forgets everything whose key begins so, in both copies and in what is open here. */
export async function forget(prefix: string): Promise<void> {
  batch(() => {
    for (const [key, one] of known) if (key.startsWith(prefix)) one.clear();
  });
  for (const name of keptBelow(prefix).keys()) drop(prefix + name);
  await dropSecond((await namesOfSecond()).filter((name) => name.startsWith(prefix)));
}

/** Follows what other open pages of the course keep. */
export function followOtherPages(): void {
  addEventListener("storage", ({ key }) => {
    if (key?.startsWith("rollbook:")) known.get(key.slice("rollbook:".length))?.again();
  });
}

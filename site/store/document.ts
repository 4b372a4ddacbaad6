import { batch, type ReadonlySignal, signal } from "@preact/signals-core";
import { dropSecond, namesOfSecond, oneSecond, putSecond } from "./second-copy.js";
import { drop, keep, keptBelow, parsed, recall } from "./texts.js";

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
const known = new Map<string, { again(): void; empty(): void; open(): Promise<void> }>();

const refusedWrites = signal(0);
/** How many writes both copies have refused in this visit. */
export const refusals: ReadonlySignal<number> = refusedWrites;
/** Counts writes that a store of another shape refused. */
export const countRefusals = (count: number): void => {
  refusedWrites.value += count;
};

class Kept<Value> implements Document<Value> {
  readonly #shape: Shape<Value>;
  readonly #now;
  #stamp: number;
  #opened: Promise<void> | undefined;

  constructor(shape: Shape<Value>) {
    this.#shape = shape;
    const { stamp, value } = this.#first() ?? { stamp: 0, value: shape.empty };
    this.#stamp = stamp;
    this.#now = signal(value);
    known.set(shape.key, this);
  }
  get now(): ReadonlySignal<Value> {
    return this.#now;
  }
  #soundFrom = (kept: unknown) => {
    const { stamp, value } = isStamped(kept) ? kept : { stamp: 0, value: kept };
    const sound = this.#shape.read(value);
    return sound === undefined ? undefined : { stamp, value: sound };
  };
  #first() {
    const { key, formerKey } = this.#shape;
    const former = () => (formerKey === undefined ? undefined : recall(formerKey, this.#soundFrom));
    return recall(key, this.#soundFrom) ?? former();
  }
  #take(other: { stamp: number; value: Value } | undefined): void {
    if (other === undefined || other.stamp <= this.#stamp) return;
    this.#stamp = other.stamp;
    this.#now.value = other.value;
  }
  /** Looks again at the first copy, which another page has written. */
  again(): void {
    this.#take(this.#first());
  }
  open(): Promise<void> {
    const look = async () => this.#take(parsed(await oneSecond(this.#shape.key), this.#soundFrom));
    this.#opened ??= look();
    return this.#opened;
  }
  async set(value: Value): Promise<boolean> {
    const { key } = this.#shape;
    this.#stamp = Math.max(this.#stamp, this.#first()?.stamp ?? 0) + 1;
    this.#now.value = value;
    const stamped: Stamped = { stamp: this.#stamp, value };
    const inFirst = keep(key, stamped);
    const inSecond = await putSecond(new Map([[key, JSON.stringify(stamped)]]));
    if (!inFirst && !inSecond) refusedWrites.value += 1;
    return inFirst || inSecond;
  }
  /** As if nothing had been kept; what the device has is left. */
  empty(): void {
    this.#now.value = this.#shape.empty;
  }
  clear(): void {
    const { key, formerKey } = this.#shape;
    this.empty();
    for (const name of formerKey === undefined ? [key] : [key, formerKey]) drop(name);
    void dropSecond([key]);
  }
}

/** A value that the device remembers under its key. */
export const documentOf = <Value>(shape: Shape<Value>): Document<Value> => new Kept(shape);

/** A text that the device remembers; empty at first. */
export const textUnder = (key: string, formerKey?: string): Document<string> =>
  documentOf({
    key,
    ...(formerKey !== undefined && { formerKey }),
    empty: "",
    read: (kept) => (typeof kept === "string" ? kept : undefined),
  });

/** Looks at the second copies of all documents of this page whose key begins so. */
export async function openAll(prefix: string): Promise<void> {
  const asked = [...known].filter(([key]) => key.startsWith(prefix));
  await Promise.all(asked.map(([, one]) => one.open()));
}

/** Forgets everything whose key begins so, in both copies and in what is open here. */
export async function forget(prefix: string): Promise<void> {
  batch(() => {
    for (const [key, one] of known) if (key.startsWith(prefix)) one.empty();
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

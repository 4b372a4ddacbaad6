import { batch, type ReadonlySignal, signal } from "@preact/signals-core";
import { isSame, merged } from "./merged.js";
import {
  dropSecond,
  flushSecond,
  namesOfSecond,
  oneSecond,
  putSecond,
  putSecondAtRest,
} from "./second-copy.js";
import { type Stamped, stamped, VERSION } from "./stamped.js";
import { drop, keepText, keptBelow, parsed, recall, textOf } from "./texts.js";
import { tellAside, tellKept } from "./told.js";

/** What the device is to remember: where, what it is before anything was kept, and how it is read. */
export interface Shape<Value> {
  readonly key: string;
  /** Where older courses kept it. */
  readonly formerKey?: string;
  readonly empty: Value;
  /**
   * The value of what this course or an older one kept; nothing where it is not sound.
   *
   * @param aside - takes a part that cannot be read: it is kept beside the value
   */
  readonly read: (kept: unknown, aside: (part: unknown) => void) => Value | undefined;
}

/** A value that the device remembers. Whoever reads `now` in a view is drawn again when it changes. */
export interface Document<Value> {
  readonly now: ReadonlySignal<Value>;
  /** Whether the first copy, all that a page sees as it opens, has the value that was set last. */
  readonly inFirst: boolean;
  /** Changes the value at once and keeps it in both copies; false where both were refused. */
  set(value: Value): Promise<boolean>;
  /** As `set`, while somebody types: the second copy waits until they rest or leave the page. */
  setTyped(value: Value): Promise<boolean>;
  /** Forgets the value in both copies. */
  clear(): void;
  /** Looks at the second copy too, once: it may be newer, or all that is left. */
  open(): Promise<void>;
}

/** A value as it was read, with its place in the order of writing, and what could not be read. */
interface Read<Value> {
  readonly stamp: number;
  readonly value: Value;
  readonly aside: readonly unknown[];
}

interface Known {
  again(): void;
  empty(): void;
  open(): Promise<void>;
  letGo(parts: readonly unknown[]): Promise<boolean>;
}

/** Documents of this visit by key, so that what another page writes or forgets is seen here. */
const known = new Map<string, Known>();

class Kept<Value> implements Document<Value>, Known {
  readonly #shape: Shape<Value>;
  readonly #now;
  #stamp: number;
  /** The value that the last one written here was made from. */
  #before: Value;
  /** The first copy as it was seen last, and whether the last value written here is in it. */
  #seen: string | null;
  #inFirst = true;
  #aside: readonly unknown[];
  #opened: Promise<void> | undefined;

  constructor(shape: Shape<Value>) {
    this.#shape = shape;
    const first = this.#first();
    this.#seen = textOf(shape.key);
    this.#stamp = first?.stamp ?? 0;
    this.#aside = [...(first?.aside ?? []), ...this.#broken(this.#seen)];
    this.#before = first?.value ?? shape.empty;
    this.#now = signal(this.#before);
    known.set(shape.key, this);
  }
  get now(): ReadonlySignal<Value> {
    return this.#now;
  }
  get inFirst(): boolean {
    return this.#inFirst;
  }
  #soundFrom = (kept: unknown): Read<Value> | undefined => {
    const { stamp, value, version = VERSION, aside = [] } = stamped(kept);
    if (version > VERSION) return undefined;
    if (value === undefined) return { stamp, value: this.#shape.empty, aside };
    const left = [...aside];
    const sound = this.#shape.read(value, (part) => left.push(part));
    return sound === undefined ? undefined : { stamp, value: sound, aside: left };
  };
  #first(): Read<Value> | undefined {
    const { key, formerKey } = this.#shape;
    const former = () => (formerKey === undefined ? undefined : recall(formerKey, this.#soundFrom));
    return recall(key, this.#soundFrom) ?? former();
  }
  /** A kept text that cannot be read, as a list; one that says nothing is none. */
  #broken(text: string | null): readonly unknown[] {
    if (text === null || text === "null") return [];
    return parsed(text, this.#soundFrom) === undefined ? [text] : [];
  }
  /** Takes in what was written elsewhere, beside what was changed here since `base`. */
  #take(other: Read<Value>, base: Value): void {
    const mine = this.#now.value;
    const both = this.#shape.read(merged(base, mine, other.value), () => {}) ?? mine;
    this.#stamp = other.stamp;
    this.#aside = union(this.#aside, other.aside);
    this.#before = other.value;
    this.#now.value = other.value;
    if (!isSame(both, other.value)) void this.set(both);
  }
  /** Looks again at the first copy, which another page may have written. */
  again(): void {
    const text = textOf(this.#shape.key);
    if (text === this.#seen) return;
    this.#seen = text;
    const other = this.#first();
    if (other === undefined || other.stamp < this.#stamp) return;
    if (other.stamp > this.#stamp)
      this.#take(other, this.#inFirst ? this.#now.value : this.#before); // it was made from mine
    else if (!isSame(other.value, this.#now.value)) this.#take(other, this.#before);
  }
  open(): Promise<void> {
    this.#opened ??= this.#look();
    return this.#opened;
  }
  async #look(): Promise<void> {
    const { key } = this.#shape;
    const text = await oneSecond(key);
    const second = parsed(text, this.#soundFrom);
    const first = textOf(key);
    if (second !== undefined && second.stamp > this.#stamp) {
      this.#aside = []; // the first copy was an older one, or was broken
      this.#take(second, this.#before);
      if (first === null) keepText(key, text ?? "");
    } else if (first === null) this.#aside = union(this.#aside, this.#broken(text));
    else if (text === null) void putSecondAtRest(key, first);
    tellAside(key, this.#aside);
  }
  /** Writes the first copy; gives the text for the second. */
  #write(value: Value): string {
    const base = this.#now.value;
    this.again();
    const now = this.#now.value;
    const both = now === base ? value : this.#shape.read(merged(base, value, now), () => {});
    this.#before = now;
    this.#stamp += 1;
    this.#now.value = both ?? value;
    const aside = this.#aside.length > 0 && { aside: this.#aside };
    const record: Stamped = {
      ...{ stamp: this.#stamp, version: VERSION, value: this.#now.value },
      ...aside,
    };
    const text = JSON.stringify(record);
    this.#inFirst = keepText(this.#shape.key, text);
    this.#seen = text;
    return text;
  }
  async #answer(inFirst: boolean, inSecond: Promise<boolean>): Promise<boolean> {
    const kept = (await inSecond) || inFirst;
    tellKept(this.#shape.key, kept, this.#now.value);
    return kept;
  }
  set(value: Value): Promise<boolean> {
    const text = this.#write(value);
    return this.#answer(this.#inFirst, putSecond(new Map([[this.#shape.key, text]])));
  }
  setTyped(value: Value): Promise<boolean> {
    const text = this.#write(value);
    return this.#answer(this.#inFirst, putSecondAtRest(this.#shape.key, text));
  }
  /** Lets go what could not be read. */
  letGo(parts: readonly unknown[]): Promise<boolean> {
    this.#aside = this.#aside.filter((one) => !parts.some((part) => isSame(one, part)));
    tellAside(this.#shape.key, this.#aside);
    return this.set(this.#now.value);
  }
  /** As if nothing had been kept; what the device has is left. */
  empty(): void {
    this.#now.value = this.#shape.empty;
    this.#before = this.#shape.empty;
    this.#aside = [];
    tellAside(this.#shape.key, []);
  }
  clear(): void {
    const { key, formerKey } = this.#shape;
    this.empty();
    tellKept(key, true);
    for (const name of formerKey === undefined ? [key] : [key, formerKey]) drop(name);
    void dropSecond([key]);
  }
}

const union = (one: readonly unknown[], other: readonly unknown[]): readonly unknown[] => [
  ...new Map([...one, ...other].map((part) => [JSON.stringify(part), part])).values(),
];

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

/** Lets go parts of a document that could not be read; false where the device refused. */
export const letAsideGo = async (key: string, parts: readonly unknown[]): Promise<boolean> =>
  (await known.get(key)?.letGo(parts)) ?? false;

/** Forgets everything whose key begins so, in both copies and in what is open here. */
export async function forget(prefix: string): Promise<void> {
  batch(() => {
    for (const [key, one] of known) if (key.startsWith(prefix)) one.empty();
  });
  for (const name of keptBelow(prefix).keys()) drop(prefix + name);
  await flushSecond();
  await dropSecond((await namesOfSecond()).filter((name) => name.startsWith(prefix)));
}

/** Follows what other open pages of the course keep and forget; keeps what waits when this one is left. */
export function followOtherPages(): void {
  addEventListener("storage", ({ key, newValue }) => {
    if (!key?.startsWith("rollbook:")) return;
    const one = known.get(key.slice("rollbook:".length));
    if (newValue === null) one?.empty();
    else one?.again();
  });
  for (const left of ["pagehide", "visibilitychange"])
    addEventListener(left, () => void flushSecond());
}

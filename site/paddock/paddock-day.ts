import {
  asClock,
  type Clock,
  canonical,
  type EventEntry,
  type LogEntry,
  MOST_ENTRIES,
  mergeLogs,
  readEntry,
  standing,
} from "@rollbook/lib";
import type { Disk } from "./disk.js";
import { Journal } from "./journal.js";
import { asPhone, MOST_PHONES, newPhone, type Phone, Phones, renamed } from "./phones.js";
import { type Filer, type WhyNot, whyNotFiled } from "./rights.js";

/** An entry as it was filed; the place in the list is its number, from 1. */
export interface Filed {
  readonly entry: LogEntry;
  /** The phone that filed it, or "desk". */
  readonly by: string;
}

/** What became of entries that were sent. */
export interface Outcome {
  /** Ids of entries that are on the disk now, or were before. */
  readonly filed: readonly string[];
  readonly refused: readonly { readonly id: string; readonly why: WhyNot }[];
}

/** The clock as the desk set it, and when. */
export interface ClockSet {
  readonly clock: Clock;
  /** ms since 1970 */
  readonly told: number;
}

const MOST_OF_PHONE = 3000;

/** A day as the desk's machine keeps it: entries that are added and never taken out, phones, the clock. */
export class PaddockDay {
  readonly #journal: Journal;
  readonly #filed: Filed[] = [];
  readonly #byId = new Map<string, Filed>();
  /** Entries by content: those under way with the promise that they are safe. */
  readonly #known = new Map<string, Promise<void>>();
  /** Questions on which nobody votes any more, by all their ids. */
  readonly #closed = new Set<string>();
  readonly #counts = new Map<string, number>();
  readonly phones = new Phones();
  #clock: ClockSet | undefined;
  #version = 0;
  #next = nextChange();

  private constructor(journal: Journal) {
    this.#journal = journal;
  }

  /** Opens the day of a file; says what was mended. */
  static async open(disk: Disk) {
    const { journal, values, torn, unreadable } = await Journal.open(disk);
    const day = new PaddockDay(journal);
    const unread = values.filter((value) => !day.#read(value)).length;
    return { day, torn, unreadable: unreadable + unread };
  }

  #read(value: unknown): boolean {
    const { entry, by, phone, clock, told } = (value ?? {}) as Record<string, unknown>;
    const one = entry === undefined ? undefined : readEntry(entry).entry;
    const [known, set] = [asPhone(phone), asClock(clock)];
    if (one !== undefined && typeof by === "string") this.#remember({ entry: one, by });
    else if (known !== undefined) this.phones.put(known);
    else if (set !== undefined && typeof told === "number") this.#clock = { clock: set, told };
    else return false;
    return true;
  }

  #remember(filed: Filed): void {
    this.#filed.push(filed);
    if (!this.#byId.has(filed.entry.id)) this.#byId.set(filed.entry.id, filed);
    const { entry } = filed;
    if (entry.kind === "question" && entry.state === "closed")
      for (const id of [entry.id, entry.replaces]) if (id !== undefined) this.#closed.add(id);
    this.#known.set(canonical(entry), Promise.resolve());
    this.#counts.set(filed.by, (this.#counts.get(filed.by) ?? 0) + 1);
  }

  /** Every entry that is safe, in the order in which they came. */
  get filed(): readonly Filed[] {
    return this.#filed;
  }

  get clock(): ClockSet | undefined {
    return this.#clock;
  }

  /** The day that was filed last. */
  get event(): EventEntry | undefined {
    const entries = this.#filed.map(({ entry }) => entry);
    return standing(mergeLogs({ entries }), "event").at(-1);
  }

  /** Whether there is room for more entries. */
  hasRoom(filer: Filer): boolean {
    const own = filer === "desk" ? 0 : (this.#counts.get(filer.id) ?? 0);
    return this.#filed.length < MOST_ENTRIES && own < MOST_OF_PHONE;
  }

  /**
   * Files entries. The promise is kept once what was taken in is on the disk; the same entry may come
   * as often as it likes and is there once. It is broken where the disk refuses.
   */
  async file(filer: Filer, items: readonly unknown[]): Promise<Outcome> {
    const fresh = new Map<string, Filed>();
    const waits: Promise<void>[] = [];
    const filed: string[] = [];
    const refused: { id: string; why: WhyNot }[] = [];
    const by = filer === "desk" ? "desk" : filer.id;
    for (const item of items) {
      const { entry } = readEntry(item);
      const content = entry === undefined ? "" : canonical(entry);
      const under = this.#known.get(content);
      if (entry === undefined) refused.push({ id: idOf(item), why: "not an entry" });
      else if (under !== undefined || fresh.has(content)) {
        filed.push(entry.id);
        if (under !== undefined) waits.push(under);
      } else {
        const why = this.#whyNot(filer, entry, [...fresh.values()]);
        if (why !== undefined) refused.push({ id: entry.id, why });
        else {
          fresh.set(content, { entry, by });
          filed.push(entry.id);
        }
      }
    }
    await Promise.all([...waits, this.#keep(fresh)]);
    return { filed, refused };
  }

  #whyNot(filer: Filer, entry: LogEntry, beside: readonly Filed[]): WhyNot | undefined {
    const before = (id: string) => beside.find((one) => one.entry.id === id);
    const known = (id: string) => before(id) ?? this.#byId.get(id);
    return whyNotFiled(filer, entry, known, (id) => this.#closed.has(id));
  }

  async #keep(fresh: ReadonlyMap<string, Filed>): Promise<void> {
    if (fresh.size === 0) return;
    const safe = this.#journal.add([...fresh.values()]);
    for (const content of fresh.keys()) this.#known.set(content, safe);
    try {
      await safe;
    } catch (error) {
      for (const content of fresh.keys()) this.#known.delete(content);
      throw error;
    }
    for (const one of fresh.values()) this.#remember(one);
    this.#changed();
  }

  /** A phone joins, or comes back under another name. Nothing where the day has no room for more. */
  async join(
    name: string,
    at: string,
    known?: Phone,
  ): Promise<{ phone: Phone; token?: string } | undefined> {
    if (known !== undefined) return { phone: await this.putPhone(renamed(known, name)) };
    if (this.phones.all().length >= MOST_PHONES) return undefined;
    const { phone, token } = newPhone(name, at);
    return { phone: await this.putPhone(phone), token };
  }

  /** Keeps what is now so of a phone. */
  async putPhone(phone: Phone): Promise<Phone> {
    await this.#journal.add([{ phone }]);
    this.phones.put(phone);
    this.#changed();
    return phone;
  }

  async setClock(set: ClockSet): Promise<void> {
    await this.#journal.add([set]);
    this.#clock = set;
    this.#changed();
  }

  /** Counts what changed. */
  get version(): number {
    return this.#version;
  }

  #changed(): void {
    this.#version += 1;
    this.#next.resolve();
    this.#next = nextChange();
  }

  /** Waits until something changes after that version. */
  change(since: number): Promise<void> {
    return this.#version === since ? this.#next.promise : Promise.resolve();
  }

  close(): Promise<void> {
    return this.#journal.close();
  }
}

/** A promise, and what keeps it. */
function nextChange(): { readonly promise: Promise<void>; readonly resolve: () => void } {
  let resolve = () => {};
  const promise = new Promise<void>((kept) => {
    resolve = kept;
  });
  return { promise, resolve };
}

const idOf = (item: unknown): string => {
  const { id } = (item ?? {}) as { id?: unknown };
  return typeof id === "string" ? id.slice(0, 40) : "";
};

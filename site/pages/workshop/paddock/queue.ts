import type { LogEntry } from "@rollbook/lib";

const MOST_AT_ONCE = 100; // entries of one message
const TRIES = 5; // of one entry alone, before it stands aside
const AGAIN = 15_000; // ms between tries of one that stands aside

/** What became of a message: its entries were answered, the desk choked on them, or it was not reached. */
type Outcome = "answered" | "choked" | "not now";

/**
 * In which order entries go to the desk: as they were written, many at once. Where the desk's machine
 * chokes on a message, ever fewer go, until the one is found that it chokes on; after some tries that
 * one stands aside, and what refers to it with it, and the others go on. It is tried again now and then.
 */
export class Queue {
  #most = MOST_AT_ONCE;
  /** How often the desk choked on an entry alone, by id. */
  readonly #choked = new Map<string, number>();
  /** When those that stand aside were tried last, ms; the first was tried longest ago. */
  readonly #aside = new Map<string, number>();

  /** Whether an entry stands aside, or refers to one that does. */
  isAside(entry: LogEntry): boolean {
    const { id, replaces, run, setUp } = entry;
    const of = entry.kind === "withdrawal" ? entry.of : undefined;
    return [id, replaces, run, setUp, of].some(
      (one) => typeof one === "string" && this.#aside.has(one),
    );
  }

  /**
   * What goes out now; nothing where all that is left stands aside and was tried a moment ago.
   *
   * @param waiting - what is not at the desk yet, in the order in which it was written
   * @param now - ms
   */
  next(waiting: readonly LogEntry[], now: number): readonly LogEntry[] {
    const ids = new Set(waiting.map(({ id }) => id));
    for (const id of this.#aside.keys()) if (!ids.has(id)) this.#aside.delete(id);
    const others = waiting.filter((entry) => !this.isAside(entry));
    if (others.length > 0) return others.slice(0, this.#most);
    const [id, tried = 0] = [...this.#aside][0] ?? [];
    return now - tried < AGAIN ? [] : waiting.filter((entry) => entry.id === id);
  }

  /** Hears what became of what went out. */
  hear(sent: readonly LogEntry[], outcome: Outcome, now: number): void {
    const [first] = sent;
    if (first === undefined) return;
    if (outcome === "not now") this.#turn(first, now);
    else if (outcome === "answered") {
      this.#most = Math.min(MOST_AT_ONCE, this.#most * 2);
      for (const { id } of sent) this.#forget(id);
    } else if (sent.length > 1) this.#most = Math.ceil(sent.length / 2);
    else this.#chokedOn(first.id, now);
  }

  #turn({ id }: LogEntry, now: number): void {
    if (this.#aside.delete(id)) this.#aside.set(id, now);
  }

  #forget(id: string): void {
    this.#choked.delete(id);
    this.#aside.delete(id);
  }

  #chokedOn(id: string, now: number): void {
    const times = (this.#choked.get(id) ?? 0) + 1;
    this.#choked.set(id, times);
    if (times < TRIES) return;
    this.#aside.delete(id);
    this.#aside.set(id, now);
  }
}

/** How often something may be asked: so many at once, and so many a second after that. */
export interface Limit {
  readonly atOnce: number;
  readonly aSecond: number;
}

const MOST_KEYS = 5000;

/** Counts who asks how often, each by a key. */
export class Buckets {
  readonly #limit: Limit;
  readonly #now: () => number;
  readonly #left = new Map<string, { count: number; at: number }>();

  constructor(limit: Limit, now: () => number = Date.now) {
    this.#limit = limit;
    this.#now = now;
  }

  /** Whether one more is within the limit; it is counted. */
  take(key: string): boolean {
    const now = this.#now();
    const { atOnce, aSecond } = this.#limit;
    const { count, at } = this.#left.get(key) ?? { count: atOnce, at: now };
    const filled = Math.min(atOnce, count + ((now - at) / 1000) * aSecond);
    if (this.#left.size >= MOST_KEYS && !this.#left.has(key)) this.#left.clear();
    this.#left.set(key, { count: Math.max(0, filled - 1), at: now });
    return filled >= 1;
  }
}

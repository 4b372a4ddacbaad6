/** One event of a stream, as it came. */
export interface StreamEvent {
  readonly event: string;
  readonly data: unknown;
}

const LONGEST = 20_000_000; // characters of one event, above any batch

/** Cuts a stream of server-sent events into events, piece by piece. – HTML Living Standard, 9.2.6 */
export class EventCutter {
  #rest = "";

  /** The events that are whole with this piece. */
  take(piece: string): StreamEvent[] {
    const blocks = (this.#rest + piece).replaceAll("\r\n", "\n").split("\n\n");
    this.#rest = blocks.pop() ?? "";
    if (this.#rest.length > LONGEST) throw new RangeError("an event without end");
    return blocks.flatMap((block) => eventOf(block) ?? []);
  }
}

function eventOf(block: string): StreamEvent | undefined {
  const fields = block.split("\n").map((line) => /^(\w+): ?(.*)$/s.exec(line));
  const all = (name: string) => fields.flatMap((one) => (one?.[1] === name ? [one[2] ?? ""] : []));
  try {
    return { event: all("event")[0] ?? "message", data: JSON.parse(all("data").join("\n")) };
  } catch {
    return undefined;
  }
}

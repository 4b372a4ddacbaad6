import type { LogEntry } from "@rollbook/lib";
import type { SSEStreamingApi } from "hono/streaming";
import type { PaddockDay } from "./paddock-day.js";
import { type Filer, isForPhone } from "./rights.js";

const MOST_AT_ONCE = 200;
const HEARTBEAT = 15_000; // ms: a phone notices within it that the desk is out of reach
const STUCK = 60_000; // ms in which a client takes nothing

/**
 * Tells a client what it may see, from a number on, for as long as it listens. Each client has its own
 * place in the list, so that one that is slow holds up nobody and nothing piles up for it.
 */
export async function tellAll(
  stream: SSEStreamingApi,
  day: PaddockDay,
  filer: () => Filer | undefined,
  after: number,
): Promise<void> {
  let [at, seen] = [after, -1];
  let told = { clock: 0, phones: "" };
  while (!stream.aborted && !stream.closed) {
    const who = filer();
    if (who === undefined) return; // it was removed meanwhile
    const { version } = day;
    while (at < day.filed.length && !stream.aborted) at = await tellSome(stream, day, who, at);
    told = {
      clock: await tellClock(stream, day, told.clock),
      phones: await tellPhones(stream, day, who, told.phones),
    };
    if (seen < 0) await send(stream, "caught-up", {}, at);
    seen = version;
    if ((await first(day.change(seen), HEARTBEAT)) === "late") await send(stream, "alive", {}, at);
  }
}

async function tellSome(
  stream: SSEStreamingApi,
  day: PaddockDay,
  who: Filer,
  from: number,
): Promise<number> {
  const to = Math.min(day.filed.length, from + MOST_AT_ONCE);
  const some = day.filed.slice(from, to).filter((one) => who === "desk" || isForPhone(one, who));
  const entries: LogEntry[] = some.map(({ entry }) => entry);
  if (entries.length > 0) await send(stream, "entries", { entries }, to);
  return to;
}

/** The clock, with the time that it is here, since a phone's own may be another. */
async function tellClock(stream: SSEStreamingApi, { clock }: PaddockDay, told: number) {
  if (clock === undefined || clock.told === told) return told;
  await send(stream, "clock", { ...clock, now: Date.now() });
  return clock.told;
}

/** The desk alone hears who has joined. */
async function tellPhones(stream: SSEStreamingApi, day: PaddockDay, who: Filer, told: string) {
  if (who !== "desk") return told;
  const phones = day.phones.all().map(({ id, name, at }) => ({ id, name, at }));
  const now = JSON.stringify(phones);
  if (now !== told) await send(stream, "phones", { phones });
  return now;
}

async function send(stream: SSEStreamingApi, event: string, data: object, id?: number) {
  const sent = stream.writeSSE({
    event,
    data: JSON.stringify(data),
    ...(id !== undefined && { id: String(id) }),
  });
  if ((await first(sent, STUCK)) === "late") stream.abort();
}

/** Whether a promise is kept within so many ms. */
function first(promise: Promise<void>, within: number): Promise<"kept" | "late"> {
  return new Promise((resolve) => {
    const late = setTimeout(() => resolve("late"), within);
    const kept = () => {
      clearTimeout(late);
      resolve("kept");
    };
    promise.then(kept, kept);
  });
}

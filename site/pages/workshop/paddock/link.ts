import { batch, effect } from "@preact/signals";
import {
  asClock,
  canonical,
  type LogEntry,
  nowStandingFor,
  readEntry,
  shifted,
  standing as standingEntries,
} from "@rollbook/lib";
import { logNow, takeIn, theLog } from "../../../store/log.js";
import { draftOf, isFiled } from "../day/draft.js";
import { change, openFiled, theDay } from "../day/open-day.js";
import { clock, setClock } from "../run/state.js";
import { words } from "../words.js";
import { type Answer, ask } from "./ask.js";
import { EventCutter, type StreamEvent } from "./events.js";
import { forDesk } from "./outbox.js";
import {
  clockAtDesk,
  dayAtDesk,
  isPaddock,
  member,
  type PhoneSeen,
  phones,
  standing,
} from "./place.js";
import { Queue } from "./queue.js";
import { amongTabs, inOneTab, type Told } from "./tabs.js";

const SHORTEST = 1000; // ms before the first try again
const LONGEST = 15_000; // ms between tries at most
const SILENCE = 40_000; // ms without a word, after which a stream is taken for dead

/** Ids of what is at the desk, as far as this visit knows. */
const there = new Set<string>();
let caughtUp = false;
let sending = false;
let queue = new Queue();
let wake: ReturnType<typeof setTimeout> | undefined;
let stream: AbortController | undefined;

/** Follows the desk from here on, where this address has one and this device has joined. */
export function followPaddock(): void {
  if (!isPaddock()) return;
  const tell = amongTabs(hear);
  tell("asks");
  inOneTab(() => {
    speaks = tell;
    effect(() => {
      tell({ standing: standing.value, phones: phones.value });
    });
    effect(() => {
      const { token } = member.now.value ?? {};
      begin(token);
    });
    effect(() => {
      logNow.value;
      drainSoon();
    });
    addEventListener("online", drainSoon);
    effect(() => {
      const now = clock.now.value;
      void sendClock(JSON.stringify(now));
    });
  });
}

let speaks: ((told: Told) => void) | undefined;

/** Another tab asks how it stands, or tells it. */
function hear(told: Told): void {
  if (told === "asks") speaks?.({ standing: standing.peek(), phones: phones.peek() });
  else if (speaks === undefined)
    batch(() => {
      standing.value = told.standing as typeof standing.value;
      phones.value = told.phones as readonly PhoneSeen[];
    });
}

const stand = (more: Partial<typeof standing.value>): void => {
  const now = { ...standing.peek(), ...more };
  if (JSON.stringify(now) !== JSON.stringify(standing.peek())) standing.value = now;
};

/** Listens with this token from now on; without one to nobody. */
function begin(token: string | undefined): void {
  stream?.abort();
  there.clear();
  caughtUp = false;
  queue = new Queue();
  if (token === undefined) return;
  stand({ out: false, waiting: [], aside: 0, refused: [] });
  const own = new AbortController();
  stream = own;
  void listen(token, own);
}

async function listen(token: string, own: AbortController): Promise<void> {
  for (let wait = SHORTEST; !own.signal.aborted; wait = Math.min(LONGEST, wait * 2)) {
    const heard = await listenOnce(token, own);
    if (own.signal.aborted) return;
    if (heard === "out") return stand({ out: true });
    stand({ reachable: false });
    if (heard === "something") wait = SHORTEST;
    await pause(wait);
  }
}

/** A pause that ends early when the device says that it has a network again. */
const pause = (length: number): Promise<void> =>
  new Promise((resolve) => {
    const end = () => {
      clearTimeout(timer);
      removeEventListener("online", end);
      resolve();
    };
    const timer = setTimeout(end, length);
    addEventListener("online", end);
  });

async function listenOnce(
  token: string,
  own: AbortController,
): Promise<"out" | "nothing" | "something"> {
  const stop = new AbortController();
  own.signal.addEventListener("abort", () => stop.abort());
  let silence = setTimeout(() => stop.abort(), SILENCE);
  try {
    const headers = { Authorization: `Bearer ${token}` };
    const response = await fetch("paddock/entries?after=0", {
      headers,
      signal: stop.signal,
      cache: "no-store",
    });
    if (response.status === 401) return "out";
    if (!response.ok || response.body === null) return "nothing";
    const pieces = response.body.pipeThrough(new TextDecoderStream()).getReader();
    const cutter = new EventCutter();
    for (;;) {
      const { done, value } = await pieces.read();
      if (done) return "something";
      clearTimeout(silence);
      silence = setTimeout(() => stop.abort(), SILENCE);
      for (const event of cutter.take(value)) take(event);
    }
  } catch {
    return "nothing";
  } finally {
    clearTimeout(silence);
    stop.abort();
  }
}

function take({ event, data }: StreamEvent): void {
  const fields = (data ?? {}) as Readonly<Record<string, unknown>>;
  stand({ reachable: true });
  if (event === "entries" && Array.isArray(fields.entries)) takeEntries(fields.entries);
  if (event === "phones" && Array.isArray(fields.phones))
    phones.value = fields.phones as readonly PhoneSeen[];
  if (event === "clock") takeClock(fields);
  if (event !== "caught-up") return;
  caughtUp = true;
  openDayOfDesk();
  drainSoon();
  void sendClock(JSON.stringify(clock.now.peek()));
}

/** What is new of entries goes into the log of this device. */
function takeEntries(items: readonly unknown[]): void {
  const entries = items.flatMap((item) => readEntry(item).entry ?? []);
  for (const { id } of entries) there.add(id);
  const here = new Map(theLog().entries.map((entry) => [entry.id, entry]));
  const fresh = entries.filter((entry) => {
    const known = here.get(entry.id);
    return known === undefined || canonical(known) !== canonical(entry);
  });
  if (fresh.length > 0) keepingPlan(() => takeIn({ entries: fresh }));
  const day = eventThere()?.id ?? "";
  if (day !== dayAtDesk.now.peek()) void dayAtDesk.set(day);
  drainSoon();
}

/** A plan that nobody has changed here follows the one that another desk has filed. */
function keepingPlan(work: () => void): void {
  const before = theDay();
  const untouched = before !== undefined && isFiled(before, theLog());
  work();
  if (!untouched || isFiled(before, theLog())) return;
  const event = nowStandingFor(theLog(), "event", before.event ?? "");
  const now = event && draftOf(event, theLog());
  if (now !== undefined) change(now);
}

/** The day that the desk filed last. */
const eventThere = () =>
  standingEntries(theLog(), "event")
    .filter(({ id }) => there.has(id))
    .at(-1);

/** A desk opens the day that is kept there, where another one is open or none. */
function openDayOfDesk(): void {
  if (member.now.peek()?.role !== "desk") return;
  const event = eventThere();
  const open = nowStandingFor(theLog(), "event", theDay()?.event ?? "");
  if (event !== undefined && (open === undefined || !there.has(open.id))) openFiled(event);
}

/** A clock that this desk set while its machine was away is newer than the one that comes from there. */
function takeClock({ clock: set, now }: Readonly<Record<string, unknown>>): void {
  const read = asClock(set);
  if (read === undefined || typeof now !== "number") return;
  const desk = member.now.peek()?.role === "desk";
  const known = clockAtDesk.now.peek();
  if (desk && known !== "" && JSON.stringify(clock.now.peek()) !== known) return;
  const here = desk ? read : shifted(read, Date.now() - now);
  void clockAtDesk.set(JSON.stringify(here));
  setClock(here);
}

/** A desk's clock goes to all others. */
async function sendClock(now: string): Promise<void> {
  const desk = member.now.peek()?.role === "desk";
  const before = clockAtDesk.now.peek();
  if (!desk || !caughtUp || now === before) return;
  void clockAtDesk.set(now);
  const answer = await ask("clock", { clock: JSON.parse(now) });
  if (answer?.status !== 200 && clockAtDesk.now.peek() === now) void clockAtDesk.set(before);
}

const drainSoon = (): void => queueMicrotask(() => void drain());

/** Looks again later, once however often it is asked. */
function drainLater(): void {
  clearTimeout(wake);
  wake = setTimeout(drainSoon, SHORTEST * 2);
}

/** Sends what is not at the desk yet, as the queue has it. */
async function drain(): Promise<void> {
  const who = member.now.peek();
  if (who === undefined) return;
  const open = nowStandingFor(theLog(), "event", theDay()?.event ?? "");
  const own = forDesk(theLog(), who, open).filter(
    ({ id }) => !there.has(id) && !standing.peek().refused.includes(id),
  );
  const asideOf = () => own.filter((entry) => queue.isAside(entry)).length;
  stand({ waiting: own.map(({ id }) => id), aside: asideOf() });
  if (!caughtUp || sending || own.length === 0) return;
  const some = queue.next(own, Date.now());
  if (some.length === 0) return drainLater();
  sending = true;
  const outcome = await send(some);
  queue.hear(some, outcome, Date.now());
  sending = false;
  stand({ aside: asideOf() });
  if (outcome === "answered") drainSoon();
  else drainLater();
}

/** What the desk's machine says where it answers and does not file: its disk is full, its program has a fault. */
function troubleIn(answer: Answer | undefined): string | undefined {
  if (answer === undefined || answer.status < 500) return undefined;
  const { fault } = answer.fields;
  return typeof fault === "string" ? fault : words.paddock.state.fault;
}

/** A fault of its program on what was sent, or too much of it; a full disk would refuse any. */
const chokes = [500, 413];

async function send(entries: readonly LogEntry[]): Promise<"answered" | "choked" | "not now"> {
  const answer = await ask("entries", { entries });
  if (answer?.status === 401) stand({ out: true });
  stand({ trouble: troubleIn(answer) });
  if (answer?.status !== 200) return chokes.includes(answer?.status ?? 0) ? "choked" : "not now";
  const { filed, refused } = answer.fields;
  for (const id of Array.isArray(filed) ? filed : []) there.add(String(id));
  const not = Array.isArray(refused) ? refused.map(({ id }) => String(id)) : [];
  stand({ refused: [...standing.peek().refused, ...not] });
  return "answered";
}

import { Database, done } from "./database.js";

/**
 * A second copy of what must not be lost, in the browser's database.
 *
 * The first store writes to the disk when the browser finds time, and a browser that is killed
 * before loses it; a transaction of the database is on the disk when it says so.
 */
const table = "kept";
const database = new Database("rollbook", [table], "strict");

const inTransaction = (work: (store: IDBObjectStore) => void): Promise<boolean> =>
  database.write((transaction) => work(transaction.objectStore(table)));

/** Texts that wait until nothing is typed for a moment, and who waits for them. */
interface Waiting {
  readonly texts: Map<string, string>;
  readonly asked: ((kept: boolean) => void)[];
  timer?: ReturnType<typeof setTimeout>;
}

const QUIET = 400; // ms
let waiting: Waiting = { texts: new Map(), asked: [] };

/** Writes texts under their names with all that waits, all or none; false where the device refused. */
export async function putSecond(texts: ReadonlyMap<string, string>): Promise<boolean> {
  const { texts: before, asked, timer } = waiting;
  waiting = { texts: new Map(), asked: [] };
  clearTimeout(timer);
  const all = new Map([...before, ...texts]);
  const kept = await inTransaction((store) => {
    for (const [name, text] of all) store.put(text, name);
  });
  for (const tell of asked) tell(kept);
  if (kept) askToStay();
  return kept;
}

/** Writes a text once nothing more is typed for a moment, or the page is left. */
export function putSecondAtRest(name: string, text: string): Promise<boolean> {
  clearTimeout(waiting.timer);
  waiting.timer = setTimeout(flushSecond, QUIET);
  waiting.texts.set(name, text);
  return new Promise((resolve) => waiting.asked.push(resolve));
}

/** Writes at once what waits. */
export async function flushSecond(): Promise<void> {
  if (waiting.asked.length > 0) await putSecond(new Map());
}

let askedToStay = false;

/** Asks the browser, once somebody has done something here, not to clear what is kept when room runs short. */
function askToStay(): void {
  if (askedToStay || !globalThis.navigator?.userActivation?.hasBeenActive) return;
  askedToStay = true;
  void navigator.storage?.persist?.().catch(() => false);
}

/** Lets texts go by their names. */
export const dropSecond = (names: readonly string[]): Promise<boolean> => {
  for (const name of names) waiting.texts.delete(name);
  return inTransaction((store) => {
    for (const name of names) store.delete(name);
  });
};

const reading = <Result>(
  work: (store: IDBObjectStore) => Promise<Result>,
  none: Result,
): Promise<Result> => database.read((transaction) => work(transaction.objectStore(table)), none);

/** The names of all texts. */
export const namesOfSecond = (): Promise<string[]> =>
  reading(async (store) => (await done(store.getAllKeys())).map(String), []);

/** One text by its name. */
export const oneSecond = (name: string): Promise<string | null> =>
  reading<string | null>(async (store) => (await done(store.get(name))) ?? null, null);

/** All texts by name. */
export const allSecond = (): Promise<Map<string, string>> =>
  reading(async (store) => {
    const [names, texts] = await Promise.all([done(store.getAllKeys()), done(store.getAll())]);
    return new Map(names.map((name, i) => [String(name), String(texts[i])]));
  }, new Map());

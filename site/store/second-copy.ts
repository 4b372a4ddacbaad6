/**
 * A second copy of what must not be lost, in the browser's database.
 *
 * The first store writes to the disk when the browser finds time, and a browser that is killed
 * before loses it; a transaction of the database is on the disk when it says so.
 */
const table = "kept";
const PATIENCE = 4000; // ms; some browsers never answer
let opened: Promise<IDBDatabase> | undefined;

function open(): Promise<IDBDatabase> {
  opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open("rollbook", 1);
    request.onupgradeneeded = () => request.result.createObjectStore(table);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    setTimeout(() => reject(new Error("the database does not answer")), PATIENCE);
  });
  return opened;
}

async function inTransaction(work: (store: IDBObjectStore) => void): Promise<boolean> {
  try {
    const transaction = (await open()).transaction(table, "readwrite", { durability: "strict" });
    work(transaction.objectStore(table));
    return await new Promise((resolve) => {
      transaction.oncomplete = () => resolve(true);
      transaction.onabort = () => resolve(false);
    });
  } catch {
    opened = undefined;
    return false;
  }
}

/** Writes texts under their names, all or none; false where the device refused. */
export const putSecond = (texts: ReadonlyMap<string, string>): Promise<boolean> =>
  inTransaction((store) => {
    for (const [name, text] of texts) store.put(text, name);
  });

/** Lets texts go by their names. */
export const dropSecond = (names: readonly string[]): Promise<boolean> =>
  inTransaction((store) => {
    for (const name of names) store.delete(name);
  });

/** Reads something; `none` where the database cannot be opened. */
async function reading<Result>(
  work: (store: IDBObjectStore) => Promise<Result>,
  none: Result,
): Promise<Result> {
  try {
    return await work((await open()).transaction(table).objectStore(table));
  } catch {
    opened = undefined;
    return none;
  }
}

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

function done<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

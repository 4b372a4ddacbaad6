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

/** The names of all texts; none where the database cannot be opened. */
export async function namesOfSecond(): Promise<string[]> {
  try {
    const store = (await open()).transaction(table).objectStore(table);
    return (await done(store.getAllKeys())).map(String);
  } catch {
    opened = undefined;
    return [];
  }
}

/** One text by its name. */
export async function oneSecond(name: string): Promise<string | undefined> {
  try {
    return await done((await open()).transaction(table).objectStore(table).get(name));
  } catch {
    opened = undefined;
    return undefined;
  }
}

/** All texts by name; none where the database cannot be opened. */
export async function allSecond(): Promise<Map<string, string>> {
  try {
    const store = (await open()).transaction(table).objectStore(table);
    const [names, texts] = await Promise.all([done(store.getAllKeys()), done(store.getAll())]);
    return new Map(names.map((name, i) => [String(name), String(texts[i])]));
  } catch {
    opened = undefined;
    return new Map();
  }
}

function done<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

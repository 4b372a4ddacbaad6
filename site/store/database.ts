const PATIENCE = 4000; // ms; some browsers never answer

/** The browser's database, opened when it is first asked, and anew after it failed. */
export class Database {
  #opened: Promise<IDBDatabase> | undefined;

  /** @param durability - "strict" waits for the disk */
  constructor(
    private readonly name: string,
    private readonly tables: readonly string[],
    private readonly durability: IDBTransactionDurability,
  ) {}
  #open(): Promise<IDBDatabase> {
    this.#opened ??= new Promise((resolve, reject) => {
      const request = indexedDB.open(this.name, 1);
      request.onupgradeneeded = () => {
        for (const table of this.tables) request.result.createObjectStore(table);
      };
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
      setTimeout(() => reject(new Error("the database does not answer")), PATIENCE);
    });
    return this.#opened;
  }
  async #transaction(mode: IDBTransactionMode): Promise<IDBTransaction> {
    const { durability } = this;
    return (await this.#open()).transaction([...this.tables], mode, { durability });
  }
  /** All or nothing; false where the device refused it. */
  async write(work: (transaction: IDBTransaction) => void): Promise<boolean> {
    try {
      const transaction = await this.#transaction("readwrite");
      work(transaction);
      return await new Promise((resolve) => {
        transaction.oncomplete = () => resolve(true);
        transaction.onabort = () => resolve(false);
      });
    } catch {
      this.#opened = undefined;
      return false;
    }
  }
  /** What is there; `none` where it cannot be read. */
  async read<Value>(
    work: (transaction: IDBTransaction) => Promise<Value>,
    none: Value,
  ): Promise<Value> {
    try {
      return await work(await this.#transaction("readonly"));
    } catch {
      this.#opened = undefined;
      return none;
    }
  }
}

/** The answer to a request. */
export function done<Value>(request: IDBRequest<Value>): Promise<Value> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

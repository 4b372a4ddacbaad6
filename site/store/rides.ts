/** Rides that a phone took down, in a database of their own: too large for the small store, and piece by piece. */
const [rides, pieces] = ["rides", "pieces"];

/** What is known of a ride without looking into it. */
export interface KeptRide {
  /** Of this device alone, by the clock at its start. */
  readonly id: string;
  /** ISO 8601, by this device's clock. */
  readonly begun: string;
  /** Name of the car that the course showed. */
  readonly car: string;
  /** Recorded here, or taken in from a table. */
  readonly from: "phone" | "table";
}

/** Samples one after the other: time, force x y z, turn x y z; and time, speed, course (NaN: not told). */
export interface Packed {
  readonly felt: Float64Array;
  readonly fixes: Float64Array;
}

let opened: Promise<IDBDatabase> | undefined;

function open(): Promise<IDBDatabase> {
  opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open("rollbook-rides", 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore(rides);
      request.result.createObjectStore(pieces);
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  return opened;
}

/** Work on both tables; false where the device refused it. */
async function written(work: (transaction: IDBTransaction) => void): Promise<boolean> {
  try {
    const transaction = (await open()).transaction([rides, pieces], "readwrite");
    work(transaction);
    return await new Promise((resolve) => {
      transaction.oncomplete = () => resolve(true);
      transaction.onabort = () => resolve(false);
    });
  } catch {
    opened = undefined;
    return false;
  }
}

async function read<Value>(ask: (transaction: IDBTransaction) => IDBRequest<Value>) {
  try {
    const request = ask((await open()).transaction([rides, pieces]));
    return await new Promise<Value | undefined>((resolve) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => resolve(undefined);
    });
  } catch {
    opened = undefined;
    return undefined;
  }
}

/** Notes that a ride has begun. */
export const keepRide = (ride: KeptRide): Promise<boolean> =>
  written((transaction) => transaction.objectStore(rides).put(ride, ride.id));

/** Keeps the next piece of a ride; each is by itself, so that a page that is killed loses none. */
export const keepPiece = (id: string, number: number, piece: Packed): Promise<boolean> =>
  written((transaction) => transaction.objectStore(pieces).put(piece, [id, number]));

/** All rides of this device, the latest first. */
export async function ridesKept(): Promise<readonly KeptRide[]> {
  const all = await read((transaction) => transaction.objectStore(rides).getAll());
  return ((all ?? []) as KeptRide[]).sort((a, b) => (a.begun < b.begun ? 1 : -1));
}

const piecesOf = (id: string) => IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER]);

/** A ride as far as it was kept. */
export async function rideKept(id: string): Promise<Packed> {
  const found = await read((transaction) => transaction.objectStore(pieces).getAll(piecesOf(id)));
  const all = (found ?? []) as Packed[];
  return {
    felt: joined(all.map(({ felt }) => felt)),
    fixes: joined(all.map(({ fixes }) => fixes)),
  };
}

function joined(parts: readonly Float64Array[]): Float64Array {
  const whole = new Float64Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Forgets a ride. */
export const forgetRide = (id: string): Promise<boolean> =>
  written((transaction) => {
    transaction.objectStore(rides).delete(id);
    transaction.objectStore(pieces).delete(piecesOf(id));
  });

import { Database, done } from "./database.js";

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

const database = new Database("rollbook-rides", [rides, pieces], "default");

/** Notes that a ride has begun. */
export const keepRide = (ride: KeptRide): Promise<boolean> =>
  database.write((transaction) => transaction.objectStore(rides).put(ride, ride.id));

/** Keeps the next piece of a ride; each is by itself, so that a page that is killed loses none. */
export const keepPiece = (id: string, number: number, piece: Packed): Promise<boolean> =>
  database.write((transaction) => transaction.objectStore(pieces).put(piece, [id, number]));

/** All rides of this device, the latest first. */
export async function ridesKept(): Promise<readonly KeptRide[]> {
  const all = await database.read<KeptRide[]>(
    (transaction) => done(transaction.objectStore(rides).getAll()),
    [],
  );
  return all.sort((a, b) => (a.begun < b.begun ? 1 : -1));
}

const piecesOf = (id: string) => IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER]);

/** A ride as far as it was kept. */
export async function rideKept(id: string): Promise<Packed> {
  const all = await database.read<Packed[]>(
    (transaction) => done(transaction.objectStore(pieces).getAll(piecesOf(id))),
    [],
  );
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
  database.write((transaction) => {
    transaction.objectStore(rides).delete(id);
    transaction.objectStore(pieces).delete(piecesOf(id));
  });

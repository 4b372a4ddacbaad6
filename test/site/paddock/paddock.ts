import { demoCar, type EventEntry, exampleVenue, type LogEntry } from "@rollbook/lib";
import { type Place, paddockApp } from "../../../site/paddock/app.js";
import type { Disk } from "../../../site/paddock/disk.js";
import { PaddockDay } from "../../../site/paddock/paddock-day.js";

export const at = "2031-05-10T09:00:00.000Z";

/** A disk in memory. */
export function memory(): Disk & { bytes: Buffer; full: boolean } {
  const disk = {
    bytes: Buffer.alloc(0),
    full: false,
    read: async () => disk.bytes,
    append: async (more: Buffer) => {
      if (disk.full) throw Object.assign(new Error("no space left"), { code: "ENOSPC" });
      disk.bytes = Buffer.concat([disk.bytes, more]);
    },
    sync: async () => {},
    cut: async (length: number) => {
      disk.bytes = disk.bytes.subarray(0, length);
    },
    close: async () => {},
  };
  return disk;
}

export const setUp: LogEntry = {
  kind: "set-up",
  id: "deskaaaa-1",
  at,
  author: "desk",
  car: demoCar,
};

export const event: EventEntry = {
  ...{ kind: "event", id: "deskaaaa-2", at, author: "desk", name: "Saturday" },
  ...{ venue: exampleVenue, minutes: 180, drivers: ["Ada", "Bela"], cars: 1 },
  ...{ steps: [{ kind: "baseline" }], setUp: setUp.id },
};

/** A run and its report as a driver's phone writes them. */
export const reportOf = (phone: string, driver: string, number = 1): LogEntry[] => {
  const run = `${phone}-${2 * number - 1}`;
  const head = { at, author: driver };
  return [
    { ...head, kind: "run", id: run, setUp: "run-1", driver, runNumber: 1 },
    {
      ...{ ...head, kind: "report", id: `${phone}-${2 * number}`, run },
      report: { corner: "Crest", phase: "middle", balance: 1 },
    },
  ];
};

/** A paddock without a network: what its machine answers. */
export async function paddock(disk = memory()) {
  const { day, ...opened } = await PaddockDay.open(disk);
  const place: Place = {
    ...{ code: "abcdef", secret: "the-secret-of-the-desk", address: "http://10.0.0.2:8080" },
    hosts: new Set(["10.0.0.2:8080"]),
  };
  const app = paddockApp(day, place);
  const ask = async (path: string, token = "", body?: unknown) => {
    const response = await app.request(`/paddock/${path}`, {
      method: body === undefined ? "GET" : "POST",
      headers: { "Content-Type": "application/json", Authorization: `Bearer ${token}` },
      ...(body !== undefined && { body: typeof body === "string" ? body : JSON.stringify(body) }),
    });
    const text = await response.text();
    return { status: response.status, fields: text === "" ? {} : JSON.parse(text) };
  };
  const join = async (name: string): Promise<string> =>
    (await ask("join", "", { code: place.code, name })).fields.token;
  const file = (token: string, ...entries: unknown[]) => ask("entries", token, { entries });
  return { day, opened, place, app, ask, join, file, desk: place.secret, disk };
}

import { join } from "node:path";
import { hostsOf } from "./addresses.js";
import type { Place } from "./app.js";
import { fileOnDisk } from "./disk.js";
import { keptPlace } from "./kept-place.js";
import { PaddockDay } from "./paddock-day.js";
import { type Certificate, listening, paddockServer } from "./server.js";

/** How a paddock is to be started. */
export interface Asked {
  /** Where the day is kept. */
  readonly folder: string;
  /** The course as it was built. */
  readonly course: string;
  /** 0: any that is free */
  readonly port: number;
  /** Of this machine in the network of the phones. */
  readonly address: string;
  readonly certificate?: Certificate;
  readonly network?: { readonly name: string; readonly password: string };
}

/** A paddock that runs. */
export interface Started {
  readonly place: Place;
  /** Where this machine itself opens it: there its camera works. */
  readonly local: string;
  /** Bytes of a torn line that were taken off, and lines that cannot be read. */
  readonly torn: number;
  readonly unreadable: number;
  stop(): Promise<void>;
}

/** Opens the day of a folder and serves it, on the address and on this machine's own. */
export async function startPaddock(asked: Asked): Promise<Started> {
  const { folder, course, address, certificate, network } = asked;
  const codes = keptPlace(folder);
  const opened = await PaddockDay.open(await fileOnDisk(join(folder, "day.jsonl")));
  const hosts = new Set<string>();
  const scheme = certificate === undefined ? "http" : "https";
  let [origin, port] = ["", asked.port];
  const place: Place = {
    ...codes,
    ...(network && { network }),
    hosts,
    get address() {
      return origin;
    },
  };
  const servers = [address, ...(address === "127.0.0.1" ? [] : ["127.0.0.1"])].map((at) => ({
    at,
    server: paddockServer(opened.day, place, course, certificate),
  }));
  for (const { at, server } of servers) port = await listening(server, port, at);
  for (const host of hostsOf([address], port, certificate !== undefined)) hosts.add(host);
  origin = `${scheme}://${address}:${port}`;
  const stop = async () => {
    for (const { server } of servers) {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    }
    await opened.day.close();
  };
  const { torn, unreadable } = opened;
  return { place, local: `${scheme}://localhost:${port}`, torn, unreadable, stop };
}

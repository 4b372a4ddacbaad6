import { readFileSync } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { createServer as createSecureServer } from "node:https";
import { getRequestListener } from "@hono/node-server";
import { filesOf } from "../commands/files-of.js";
import { type Place, paddockApp } from "./app.js";
import type { PaddockDay } from "./paddock-day.js";

/** A certificate of the user's own, as texts. */
export interface Certificate {
  readonly cert: string;
  readonly key: string;
}

export const certificateFrom = (cert: string, key: string): Certificate => ({
  cert: readFileSync(cert, "utf8"),
  key: readFileSync(key, "utf8"),
});

/** What every answer carries; the page's own policy covers the rest. */
const headers = {
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Content-Security-Policy": "frame-ancestors 'self'",
  "Cross-Origin-Resource-Policy": "same-origin",
} as const;

/** Tells the pages that a day is kept here. */
const marker = "rollbook-paddock=1; Path=/; SameSite=Strict";

/** A request that means another machine, or comes from another site's page. */
function isForeign({ headers, method }: IncomingMessage, { hosts }: Place): boolean {
  const { host = "", origin } = headers;
  if (!hosts.has(host.toLowerCase())) return true;
  if (method !== "GET" && headers["sec-fetch-site"] === "cross-site") return true;
  return origin !== undefined && !hosts.has(origin.toLowerCase().replace(/^https?:\/\//, ""));
}

/**
 * The course in a folder and the day, on one port.
 *
 * @param folder - the course as it was built
 */
export function paddockServer(
  day: PaddockDay,
  place: Place,
  folder: string,
  certificate?: Certificate,
): Server {
  const answer = getRequestListener(paddockApp(day, place).fetch);
  const files = filesOf(folder, {
    etag: true,
    setHeaders: (response) => response.setHeader("Cache-Control", "no-cache"),
  });
  const listener = (request: IncomingMessage, response: ServerResponse) => {
    for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
    if (isForeign(request, place)) {
      response.writeHead(421).end("This is another machine than was asked for.");
      return;
    }
    if (request.url?.startsWith("/paddock/")) {
      void answer(request, response);
      return;
    }
    if (request.url === "/join") {
      response.writeHead(302, { Location: "/workshop.html#join" }).end();
      return;
    }
    response.setHeader("Set-Cookie", marker);
    files(request, response, () => {
      response.writeHead(404).end("There is no such page.");
    });
  };
  const server =
    certificate === undefined ? createServer(listener) : createSecureServer(certificate, listener);
  server.headersTimeout = 15_000;
  server.requestTimeout = 30_000; // a message that comes slower than that is none
  server.keepAliveTimeout = 10_000;
  server.maxHeadersCount = 100;
  server.maxConnections = 2000;
  return server;
}

/** Listens, and gives the port. */
export const listening = (server: Server, port: number, address: string): Promise<number> =>
  new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, address, () => {
      server.off("error", reject);
      const at = server.address();
      resolve(typeof at === "object" && at !== null ? at.port : port);
    });
  });

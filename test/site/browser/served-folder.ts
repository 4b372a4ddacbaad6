import { cpSync, mkdirSync, rmSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { inRoot } from "../../../site/build/paths.js";
import { filesOf } from "../../../site/commands/files-of.js";

/** A copy of the course that a test may change, served below a path of its own. */
export interface ServedFolder {
  readonly folder: string;
  readonly url: string;
  /** Takes the host away: nothing answers any more. */
  stop(): Promise<void>;
  remove(): void;
}

function listen(folder: string, path: string): Promise<Server> {
  const files = filesOf(folder, { dev: true, etag: true });
  const server = createServer((request, response) => {
    const missing = () => {
      response.writeHead(404).end("There is no such page.");
    };
    if (!request.url?.startsWith(path)) return missing();
    request.url = request.url.slice(path.length - 1);
    files(request, response, missing);
  });
  return new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(server)));
}

export async function serveCopy(name: string, path = "/club/rollbook/"): Promise<ServedFolder> {
  const folder = inRoot(`.cache/test-${name}`);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  cpSync(process.env.DIST ?? inRoot("dist"), folder, { recursive: true });
  const server = await listen(folder, path);
  return {
    folder,
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}${path}`,
    stop: () => {
      server.closeAllConnections();
      return new Promise((resolve) => server.close(() => resolve()));
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

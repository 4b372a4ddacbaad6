import { existsSync, readFileSync } from "node:fs";
import { createServer, type ServerResponse } from "node:http";
import { CourseError } from "../build/notebook.js";
import { inRoot } from "../build/paths.js";
import { filesOf } from "./files-of.js";

function portFromEnvironment(): number {
  const given = process.env.PORT ?? "4173";
  const port = Number(given);
  if (!Number.isInteger(port) || port < 1 || port > 65535) {
    throw new CourseError(`PORT is ${given}; it must be a whole number from 1 to 65535.`);
  }
  return port;
}

function withdrawWorker(response: ServerResponse): void {
  response.writeHead(200, { "Content-Type": "text/javascript", "Cache-Control": "no-store" });
  response.end(readFileSync(inRoot("site/offline/withdraw.js")));
}

/**
 * Serves the course on this machine only; a busy port is told in one sentence.
 *
 * @param kept - whether browsers may keep the course; while it is being written they should not
 */
export function serveCourse({ kept = true, folder = inRoot("dist") } = {}): Promise<string> {
  const port = portFromEnvironment();
  const files = filesOf(folder, { dev: true });
  const server = createServer((request, response) => {
    if (!kept && request.url === "/sw.js") return withdrawWorker(response);
    files(request, response, () => {
      response.writeHead(404, { "Content-Type": "text/html; charset=utf-8" });
      const told = `${folder}/404.html`;
      response.end(existsSync(told) ? readFileSync(told) : "The course is still being built.");
    });
  });
  return new Promise((resolve, reject) => {
    server.on("error", (error: NodeJS.ErrnoException) =>
      reject(
        error.code === "EADDRINUSE"
          ? new CourseError(
              `Port ${port} is busy; choose another, such as PORT=${port + 1} npm start.`,
            )
          : error,
      ),
    );
    server.listen(port, "127.0.0.1", () => resolve(`http://127.0.0.1:${port}`));
  });
}

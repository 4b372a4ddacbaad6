import { createServer } from "node:http";
import sirv from "sirv";
import { CourseError } from "../build/notebook.js";
import { inRoot } from "../build/paths.js";

function portFromEnvironment(): number {
  const given = process.env.PORT ?? "4173";
  const port = Number(given);
  if (!Number.isInteger(port) || port < 1 || port > 65535) {
    throw new CourseError(`PORT is ${given}; it must be a whole number from 1 to 65535.`);
  }
  return port;
}

/** Serves dist/ on this machine only; a busy port is told in one sentence. */
export function serveCourse(): Promise<string> {
  const port = portFromEnvironment();
  const files = sirv(inRoot("dist"), { dev: true });
  const server = createServer((request, response) =>
    files(request, response, () => {
      response.writeHead(404).end("There is no such page.");
    }),
  );
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

import { spawn } from "node:child_process";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { setTimeout as wait } from "node:timers/promises";
import { inRoot } from "../build/paths.js";
import { changeCell, courseOf, home } from "./course-copy.js";
import { quantile } from "./row.js";

const chapter = "04-roll-centre";
const changes = 5;
const longest = 200_000; // ms

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return port;
}

async function until(url: string, text: string): Promise<void> {
  const began = performance.now();
  while (performance.now() - began < longest) {
    const answer = await fetch(url).catch(() => undefined);
    if (answer?.ok && (await answer.text()).includes(text)) return;
    await wait(5);
  }
  throw new Error(`${url} never said ${text}`);
}

/** Seconds from the moment at which a changed cell is saved until its page is served, the middle of several changes. */
export async function servedAgain(): Promise<number> {
  const { course, asked } = courseOf("dev", () => true);
  const port = await freePort();
  const server = spawn(process.execPath, [inRoot("site/launch.mjs"), "dev", ...asked], {
    stdio: "ignore",
    detached: true, // with what it starts, so that all of it can be stopped
    env: { ...process.env, ROLLBOOK_CACHE: `${home}/cache`, PORT: String(port) },
  });
  const url = `http://127.0.0.1:${port}/${chapter}.html`;
  try {
    await until(url, "</html>");
    const times: number[] = [];
    for (let i = 0; i < changes; i += 1) {
      await wait(500);
      const said = `Cell of change ${i + 1}.`;
      const saved = performance.now();
      changeCell(`${course}/${chapter}.ipynb`, "markdown", said);
      await until(url, said);
      times.push((performance.now() - saved) / 1000);
    }
    return quantile(times, 0.5);
  } finally {
    if (server.pid !== undefined) process.kill(-server.pid);
  }
}

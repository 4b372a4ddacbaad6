import { spawn } from "node:child_process";
import { setTimeout as wait } from "node:timers/promises";
import { inRoot } from "../build/paths.js";
import { freePort } from "../commands/free-port.js";
import { changeCell, courseOf, home } from "./course-copy.js";
import { quantile } from "./row.js";

const changes = 3;
const longest = 200_000; // ms

async function until(url: string, text: string): Promise<void> {
  const began = performance.now();
  while (performance.now() - began < longest) {
    const answer = await fetch(url).catch(() => undefined);
    if (answer?.ok && (await answer.text()).includes(text)) return;
    await wait(5);
  }
  throw new Error(`${url} never said ${text}`);
}

/** Seconds from the moment at which a changed cell is saved until it is served, the middle of several changes. */
async function servedAgain(
  { course, origin }: { course: string; origin: string },
  chapter: string,
  kind: "code" | "markdown",
): Promise<number> {
  const page = kind === "code" ? `${chapter}.code.html` : `${chapter}.html`;
  const times: number[] = [];
  for (let i = 0; i < changes; i += 1) {
    await wait(500);
    const said = `Cell of change ${i + 1}.`;
    const saved = performance.now();
    changeCell(`${course}/${chapter}.ipynb`, kind, kind === "code" ? `// ${said}` : said);
    await until(`${origin}/${page}`, said);
    times.push((performance.now() - saved) / 1000);
  }
  return quantile(times, 0.5);
}

/** What an author waits for under `npm run dev`: a cell of prose, and one of code in the chapter given. */
export async function devTimes(slowest: string): Promise<{ prose: number; code: number }> {
  const { course, asked } = courseOf("dev", () => true);
  const port = await freePort();
  const server = spawn(process.execPath, [inRoot("site/launch.mjs"), "dev", ...asked], {
    stdio: "ignore",
    detached: true, // with what it starts, so that all of it can be stopped
    env: { ...process.env, ROLLBOOK_CACHE: `${home}/cache`, PORT: String(port) },
  });
  const place = { course, origin: `http://127.0.0.1:${port}` };
  try {
    await until(`${place.origin}/index.html`, "</html>");
    const prose = await servedAgain(place, "04-roll-centre", "markdown");
    return { prose, code: await servedAgain(place, slowest, "code") };
  } finally {
    if (server.pid !== undefined) process.kill(-server.pid);
  }
}

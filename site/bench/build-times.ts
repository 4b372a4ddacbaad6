import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { inRoot } from "../build/paths.js";
import { changeCell, courseOf, home } from "./course-copy.js";
import { servedAgain } from "./dev-times.js";
import type { Row } from "./row.js";

function secondsOf(...asked: readonly string[]): number {
  const started = performance.now();
  const { status, stderr } = spawnSync(process.execPath, [inRoot("site/launch.mjs"), ...asked], {
    env: { ...process.env, ROLLBOOK_CACHE: `${home}/cache` },
  });
  if (status !== 0) throw new Error(`${asked.join(" ")} failed: ${stderr}`);
  return (performance.now() - started) / 1000;
}

/** Seconds of a build with nothing kept: packages compiled, every cell run. */
function fromNothing(out: string, ...asked: readonly string[]): number {
  for (const kept of [out, `${home}/cache`, inRoot("lib/dist"), inRoot("site/cells/dist")])
    rmSync(kept, { recursive: true, force: true });
  return secondsOf("build", ...asked);
}

/** The chapter whose cells took longest when they last ran. */
function slowestChapter(): string {
  const seconds: Record<string, number> = JSON.parse(
    readFileSync(`${home}/cache/seconds.json`, "utf8"),
  );
  const [slowest] = Object.entries(seconds).sort(([, a], [, b]) => b - a);
  return slowest?.[0] ?? "";
}

function afterOneCodeCell(): number {
  const { course, asked } = courseOf("all", () => true);
  secondsOf("build", ...asked);
  changeCell(`${course}/${slowestChapter()}.ipynb`, "code", "// changed");
  return secondsOf("build", ...asked);
}

/** Builds with nothing kept from before, with nothing changed, and with one cell of the slowest chapter changed. */
export async function buildTimes(): Promise<Row[]> {
  const five = courseOf("five", (name) => /^0[1-5]-/.test(name));
  const cold = fromNothing(five.out, ...five.asked);
  const all = fromNothing(inRoot("dist"));
  const unchanged = secondsOf("build");
  const row = (what: string, value: number, most: number): Row => ({
    what,
    value,
    most,
    unit: "s",
  });
  return [
    row("chapters 1 to 5 built from nothing, kernel and all pages", cold, 8),
    row("all chapters built from nothing", all, 14),
    row("course built, nothing changed", unchanged, 0.4),
    row(
      "one prose cell of a chapter changed, until `npm run dev` serves it",
      await servedAgain(),
      0.5,
    ),
    row("course built, one code cell of the slowest chapter changed", afterOneCodeCell(), 3),
  ];
}

/** What a file of three chapters weighs, as it lies there and as a server would send it. */
export function primerWeight(): Row[] {
  const file = `${home}/primer.html`;
  mkdirSync(home, { recursive: true });
  secondsOf("primer", "--chapters", "01,02,03", "--out", file);
  const row = (what: string, bytes: number): Row => ({
    what: `primer of chapters 1 to 3, ${what}`,
    ...{ value: bytes / 1000, most: 400, unit: "KB" },
  });
  return [
    row("gzip", gzipSync(readFileSync(file), { level: 9 }).length),
    row("the file itself", statSync(file).size),
  ];
}

import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { readNotebooks } from "../build/build.js";
import { inRoot } from "../build/paths.js";
import type { Row } from "./row.js";

const home = inRoot(".cache/bench");

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

/** A course of its own with some of the chapters, at which a measure may change something. */
function courseOf(name: string, wanted: (chapter: string) => boolean) {
  const course = `${home}/${name}`;
  rmSync(course, { recursive: true, force: true });
  mkdirSync(course, { recursive: true });
  for (const chapter of readNotebooks()
    .map(({ name }) => name)
    .filter(wanted))
    cpSync(inRoot(`notebooks/${chapter}.ipynb`), `${course}/${chapter}.ipynb`);
  return { course, out: `${course}/dist`, asked: ["--course", course] };
}

/** The chapter whose cells took longest when they last ran. */
function slowestChapter(): string {
  const seconds: Record<string, number> = JSON.parse(
    readFileSync(`${home}/cache/seconds.json`, "utf8"),
  );
  const [slowest] = Object.entries(seconds).sort(([, a], [, b]) => b - a);
  return slowest?.[0] ?? "";
}

/** Adds a line to the last cell of a kind, as an author would who changes one. */
export function changeCell(file: string, kind: "code" | "markdown", line: string): void {
  const notebook = JSON.parse(readFileSync(file, "utf8"));
  const cell = notebook.cells.findLast(
    ({ cell_type }: { cell_type: string }) => cell_type === kind,
  );
  cell.source = `${[cell.source].flat().join("")}\n${line}`;
  writeFileSync(file, JSON.stringify(notebook, null, 1));
}

function afterOneCodeCell(): number {
  const { course, asked } = courseOf("all", () => true);
  secondsOf("build", ...asked);
  changeCell(`${course}/${slowestChapter()}.ipynb`, "code", "// changed");
  return secondsOf("build", ...asked);
}

/** Builds with nothing kept from before, with nothing changed, and with one cell of the slowest chapter changed. */
export function buildTimes(): Row[] {
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

import { measurePages, slowDown } from "../page-measures.js";
import { round } from "../row.js";
import { courseSliders } from "../with-site.js";
import { buildOurs, buildTheirs } from "./builds.js";
import { ours, theirs, writeChapters } from "./chapters.js";
import { install } from "./install.js";
import { tool } from "./tool.js";

/** One measure of both. */
interface Pair {
  readonly what: string;
  readonly unit: string;
  readonly course: number;
  readonly other: number;
}

function table(pairs: readonly Pair[]): string {
  const lines = pairs.map(
    ({ what, unit, course, other }) =>
      `| ${what} | ${round(course)} ${unit} | ${round(other)} ${unit} | ${(other / course).toFixed(2)} |`,
  );
  const head = `| measure | this course | ${tool.name} ${tool.version} | ratio |`;
  return [head, "|---|---|---|---|", ...lines].join("\n");
}

/** Builds and pages of the same chapters by this course and by the other tool, as a table. */
export async function compared(): Promise<string> {
  await install();
  const pages = writeChapters();
  const builds = { course: buildOurs(), other: buildTheirs(pages) };
  const course = await measurePages({ folder: ours.out, pages, sliders: courseSliders });
  const other = await measurePages({
    folder: theirs.out,
    pages,
    sliders: ".figure input[type=range]",
  });
  const pair = (what: string, unit: string, of: (seen: typeof course) => number): Pair => ({
    what,
    unit,
    course: of(course),
    other: of(other),
  });
  const build = (what: string, key: "cold" | "warm"): Pair => ({
    what,
    unit: "s",
    course: builds.course[key],
    other: builds.other[key],
  });
  const slow = `at ${slowDown}× throttle`;
  return table([
    build("chapters built from nothing", "cold"),
    build("chapters built, nothing changed", "warm"),
    pair("first chapter, gzip", "KB", ({ first }) => first.bytes / 1000),
    pair("first chapter, requests", "", ({ first }) => first.requests),
    pair("heaviest next chapter, gzip", "KB", ({ heaviestNext }) => heaviestNext / 1000),
    pair(`first paint, slowest chapter, ${slow}`, "ms", ({ arrival }) => arrival.paint),
    pair(`first figure live, slowest chapter, ${slow}`, "ms", ({ arrival }) => arrival.live),
    pair(`slider event to DOM, p95, ${slow}`, "ms", ({ eventToDom }) => eventToDom),
    pair(`key press to paint, p98, ${slow}`, "ms", ({ keyToPaint }) => keyToPaint),
  ]);
}

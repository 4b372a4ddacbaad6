import { measurePages, slowDown } from "../page-measures.js";
import { round } from "../row.js";
import { courseSliders } from "../with-site.js";
import { buildKits, buildOurs, buildPresses } from "./builds.js";
import { kits, ours, presses, writeChapters } from "./chapters.js";
import { install } from "./install.js";
import { notebookKit, vitepress } from "./tool.js";

/** One measure of all: this course first. */
interface Measure {
  readonly what: string;
  readonly unit: string;
  readonly values: readonly number[];
}

const tools = [notebookKit, vitepress];

function table(measures: readonly Measure[]): string {
  const lines = measures.map(({ what, unit, values: [course = Number.NaN, ...others] }) => {
    const beside = others.map(
      (other) => `${round(other)} ${unit} | ${(other / course).toFixed(2)}`,
    );
    return `| ${what} | ${round(course)} ${unit} | ${beside.join(" | ")} |`;
  });
  const names = tools.map(({ name, version }) => `${name} ${version} | ratio`);
  const head = `| measure | this course | ${names.join(" | ")} |`;
  return [head, `|---|---|${"---|---|".repeat(tools.length)}`, ...lines].join("\n");
}

/** Builds and pages of the same chapters by this course and by other tools, as a table. */
export async function compared(): Promise<string> {
  for (const tool of tools) await install(tool);
  const pages = writeChapters();
  const builds = [buildOurs(), buildKits(pages), buildPresses()];
  const figures = ".figure input[type=range]";
  const seen = [
    await measurePages({ folder: ours.out, pages, sliders: courseSliders }),
    await measurePages({ folder: kits.out, pages, sliders: figures }),
    await measurePages({ folder: presses.out, pages, sliders: figures }),
  ];
  const build = (what: string, key: "cold" | "warm"): Measure => ({
    what,
    unit: "s",
    values: builds.map((one) => one[key]),
  });
  const page = (what: string, unit: string, of: (one: (typeof seen)[0]) => number): Measure => ({
    what,
    unit,
    values: seen.map(of),
  });
  const slow = `at ${slowDown}× throttle`;
  return table([
    build("chapters built from nothing", "cold"),
    build("chapters built, nothing changed", "warm"),
    page("first chapter, gzip", "KB", ({ first }) => first.bytes / 1000),
    page("first chapter, requests", "", ({ first }) => first.requests),
    page("heaviest next chapter, gzip", "KB", ({ heaviestNext }) => heaviestNext / 1000),
    page(`first paint, slowest chapter, ${slow}`, "ms", ({ arrival }) => arrival.paint),
    page(`first figure live, slowest chapter, ${slow}`, "ms", ({ arrival }) => arrival.live),
    page(`slider event to DOM, p95, ${slow}`, "ms", ({ eventToDom }) => eventToDom),
    page(`key press to paint, p98, ${slow}`, "ms", ({ keyToPaint }) => keyToPaint),
  ]);
}

import { spawnSync } from "node:child_process";
import { rmSync } from "node:fs";
import { inRoot } from "../../build/paths.js";
import { kits, ours, presses } from "./chapters.js";
import { home, notebookKit, vitepress } from "./tool.js";

/** Seconds of a build with nothing kept from before, and of one with nothing changed. */
interface BuildSeconds {
  readonly cold: number;
  readonly warm: number;
}

/** Holds what cells show, of this comparison alone. */
const cache = `${home}/outputs`;

function secondsOf(args: readonly string[]): number {
  const started = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, {
    cwd: inRoot("."),
    encoding: "utf8",
    env: { ...process.env, ROLLBOOK_CACHE: cache },
  });
  if (status !== 0) throw new Error(`${args.join(" ")} failed: ${stderr}`);
  return (performance.now() - started) / 1000;
}

function coldThenWarm(out: string, args: readonly string[]): BuildSeconds {
  rmSync(out, { recursive: true, force: true });
  const cold = secondsOf(args);
  return { cold, warm: secondsOf(args) };
}

/** This course of the compared chapters, with the pages that stand beside them; packages compiled. */
export function buildOurs(): BuildSeconds {
  rmSync(cache, { recursive: true, force: true });
  return coldThenWarm(ours.out, ["--import", "tsx", inRoot("site/bench/beside/build-course.ts")]);
}

/** The same chapters by the first tool's own command. */
export function buildKits(names: readonly string[]): BuildSeconds {
  const command = `${notebookKit.home}/node_modules/${notebookKit.name}/dist/bin/notebooks.js`;
  const template = inRoot("site/bench/beside/template.html");
  const files = names.map((name) => `${kits.notebooks}/${name}.html`);
  const where = ["--root", kits.notebooks, "--out", kits.out, "--template", template];
  return coldThenWarm(kits.out, [command, "build", ...where, "--empty", "--", ...files]);
}

/** The same by the second one's. */
export function buildPresses(): BuildSeconds {
  const command = `${vitepress.home}/node_modules/vitepress/bin/vitepress.js`;
  return coldThenWarm(presses.out, [command, "build", presses.notebooks]);
}

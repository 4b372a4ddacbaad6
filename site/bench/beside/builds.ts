import { spawnSync } from "node:child_process";
import { mkdirSync, renameSync, rmSync } from "node:fs";
import { inRoot } from "../../build/paths.js";
import { ours, theirs } from "./chapters.js";
import { home, tool } from "./tool.js";

/** Seconds of a build with nothing kept from before, and of one with nothing changed. */
interface BuildSeconds {
  readonly cold: number;
  readonly warm: number;
}

function secondsOf(args: readonly string[]): number {
  const started = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, {
    cwd: inRoot("."),
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(`${args.join(" ")} failed: ${stderr}`);
  return (performance.now() - started) / 1000;
}

function coldThenWarm(out: string, args: readonly string[]): BuildSeconds {
  rmSync(out, { recursive: true, force: true });
  const cold = secondsOf(args);
  return { cold, warm: secondsOf(args) };
}

const outputs = inRoot(".cache/outputs");

/** Does something with no kept output of a cell, and then puts those back that there were. */
function withoutOutputs<Found>(work: () => Found): Found {
  const aside = `${home}/outputs`;
  rmSync(aside, { recursive: true, force: true });
  mkdirSync(outputs, { recursive: true });
  renameSync(outputs, aside);
  try {
    return work();
  } finally {
    rmSync(outputs, { recursive: true, force: true });
    renameSync(aside, outputs);
  }
}

/** This course of the compared chapters, with the pages that stand beside them; packages compiled. */
export const buildOurs = (): BuildSeconds =>
  withoutOutputs(() =>
    coldThenWarm(ours.out, ["--import", "tsx", inRoot("site/bench/beside/build-course.ts")]),
  );

/** The same chapters by the other tool's own command. */
export function buildTheirs(names: readonly string[]): BuildSeconds {
  const command = `${home}/node_modules/${tool.name}/dist/bin/notebooks.js`;
  const template = inRoot("site/bench/beside/template.html");
  const files = names.map((name) => `${theirs.notebooks}/${name}.html`);
  const where = ["--root", theirs.notebooks, "--out", theirs.out, "--template", template];
  return coldThenWarm(theirs.out, [command, "build", ...where, "--empty", "--", ...files]);
}

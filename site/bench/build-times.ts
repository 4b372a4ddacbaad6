import { spawnSync } from "node:child_process";
import { rmSync } from "node:fs";
import { inRoot } from "../build/paths.js";
import type { Row } from "./row.js";

function secondsOf(command: string, cache: string): number {
  const started = performance.now();
  const { status, stderr } = spawnSync(process.execPath, [inRoot("site/launch.mjs"), command], {
    env: { ...process.env, ROLLBOOK_CACHE: cache },
  });
  if (status !== 0) throw new Error(`${command} failed: ${stderr}`);
  return (performance.now() - started) / 1000;
}

/** Builds with nothing kept from before, then again with nothing changed. */
export function buildTimes(): Row[] {
  const cache = inRoot(".cache/bench");
  rmSync(cache, { recursive: true, force: true });
  for (const kept of ["dist", "lib/dist", "site/cells/dist"]) {
    rmSync(inRoot(kept), { recursive: true, force: true });
  }
  const cold = secondsOf("build", cache);
  const warm = secondsOf("build", cache);
  return [
    { what: "course built from nothing", value: cold, most: 25, unit: "s" },
    { what: "course built, nothing changed", value: warm, most: 1.5, unit: "s" },
  ];
}

import { spawnSync } from "node:child_process";
import { secondsKept } from "../../test/seconds.js";
import { inRoot } from "../build/paths.js";
import { planFor } from "./changed/plan.js";
import { ensureTestTools } from "./needs.js";
import { reportFaults } from "./report-faults.js";

function step(settings: Record<string, string>, ...command: readonly string[]): void {
  const [script = "", ...args] = command;
  const { status } = spawnSync(process.execPath, [inRoot(`node_modules/${script}`), ...args], {
    cwd: inRoot("."),
    stdio: "inherit",
    env: { ...process.env, ...settings },
  });
  if (status !== 0) process.exit(status ?? 1);
}

function check(): void {
  step({}, "typescript/bin/tsc", "--noEmit");
  step({}, "@biomejs/biome/bin/biome", "check");
  step({}, "tsx/dist/cli.mjs", "site/commands/floors.ts");
}

const vitest = "vitest/vitest.mjs";

/** Types, lint, floors, and the nearest tests to what differs from a commit. */
async function runChanged(commit: string): Promise<void> {
  const { changed, files, pages, left } = await planFor(commit, secondsKept());
  check();
  console.log(
    `${changed.length} files differ from ${commit}; ${files.length} test files are near.`,
  );
  if (files.length > 0)
    step(pages.length > 0 ? { PAGES: pages.join(",") } : {}, vitest, "run", ...files);
  if (left.length > 0)
    console.log(`Left to npm test, for time: ${left.length} files, such as ${left[0]}.`);
}

await reportFaults(async () => {
  const [first = "", ...rest] = process.argv.slice(2);
  if (first === "--changed") return runChanged(rest[0] ?? "HEAD");
  ensureTestTools();
  if (first === "") check();
  step({}, vitest, "run", ...process.argv.slice(2));
});

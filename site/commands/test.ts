import { spawnSync } from "node:child_process";
import { inRoot } from "../build/paths.js";
import { ensureTestTools } from "./needs.js";
import { reportFaults } from "./report-faults.js";

function step(...command: readonly string[]): void {
  const [script = "", ...args] = command;
  const { status } = spawnSync(process.execPath, [inRoot(`node_modules/${script}`), ...args], {
    cwd: inRoot("."),
    stdio: "inherit",
  });
  if (status !== 0) process.exit(status ?? 1);
}

await reportFaults(async () => {
  const chosen = process.argv.slice(2);
  ensureTestTools();
  if (chosen.length === 0) {
    step("typescript/bin/tsc", "--noEmit");
    step("@biomejs/biome/bin/biome", "check");
  }
  step("vitest/vitest.mjs", "run", ...chosen);
});

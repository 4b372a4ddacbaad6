import { spawnSync } from "node:child_process";
import { parseArgs } from "node:util";
import { inRoot } from "../build/paths.js";
import { ensureTestTools } from "./needs.js";
import { reportFaults } from "./report-faults.js";

/** How far the long run goes; each can be set for a shorter or a longer one. */
const { values } = parseArgs({
  options: {
    cars: { type: "string", default: "100000" },
    files: { type: "string", default: "100000" },
    cases: { type: "string", default: "1000000" },
    seconds: { type: "string", default: "30" },
  },
});

let failed = false;

/** Runs tests whatever became of those before, so that one night finds all there is. */
function run(title: string, names: readonly string[], settings: Record<string, string>): void {
  console.log(`\n${title}`);
  const patience = "--testTimeout=86400000"; // a day
  const { status } = spawnSync(
    process.execPath,
    [inRoot("node_modules/vitest/vitest.mjs"), "run", patience, ...names],
    { cwd: inRoot("."), stdio: "inherit", env: { ...process.env, ...settings } },
  );
  failed ||= status !== 0;
}

await reportFaults(async () => {
  ensureTestTools();
  run(
    `Laws on ${values.cars} cars over the whole parameter table`,
    ["laws.test.ts", "--project=lib"],
    { LAW_RUNS: values.cars },
  );
  run(
    `Broken files, links, logs, notebooks and stores, ${values.files} of each`,
    ["fuzz.test.ts", "parse.test.ts", "log-file.test.ts", "site/map/map.test.ts"],
    { FUZZ_RUNS: values.files },
  );
  run(
    `Every other law on ${values.cases} cases, or on as many as ${values.seconds} s allow`,
    ["--project=lib"],
    { LONG_RUNS: values.cases, LONG_SECONDS: values.seconds },
  );
  if (failed) process.exitCode = 1;
});

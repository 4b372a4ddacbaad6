import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { inRoot } from "../../build/paths.js";
import { type Counts, countsOf, type Tally } from "./tally.js";

/** How much one shard tries. */
export interface Work {
  readonly cars: number;
  readonly files: number;
  readonly cases: number;
  /** The longest that a law without a number of its own may take, s. */
  readonly seconds: number;
  /** The longest that the shard may take; laws not done by then are cut short. */
  readonly minutes: number;
  readonly seed: number;
  /** Parts of file names to keep to; none for all. */
  readonly only: readonly string[];
}

/** Test files with laws: those that speak of fast-check, by their text. */
function lawFiles(only: readonly string[]): string[] {
  const names = readdirSync(inRoot("test"), { recursive: true, encoding: "utf8" });
  return names
    .filter((name) => name.endsWith(".test.ts"))
    .map((name) => `test/${name}`)
    .filter((path) => only.length === 0 || only.some((part) => path.includes(part)))
    .filter((path) => readFileSync(inRoot(path), "utf8").includes('from "fast-check"'));
}

/** Whether laws of a file ask how many cars or broken files they shall try. */
const asksHowMany = (path: string): boolean =>
  /\b(FUZZ_)?RUNS\b/.test(readFileSync(inRoot(path), "utf8"));

function vitest(files: readonly string[], settings: Record<string, string>): boolean {
  if (files.length === 0) return true;
  const { status } = spawnSync(
    process.execPath,
    [inRoot("node_modules/vitest/vitest.mjs"), "run", "--testTimeout=86400000", ...files],
    { cwd: inRoot("."), stdio: "inherit", env: { ...process.env, ...settings } },
  );
  return status === 0;
}

/** Runs the laws of one shard, whatever became of those before, and counts what was tried. */
export function runShard(work: Work): { passed: boolean; counts: Counts } {
  const tally = inRoot(".cache/long-tally.jsonl");
  mkdirSync(inRoot(".cache"), { recursive: true });
  rmSync(tally, { force: true });
  const common = {
    LONG_TALLY: tally,
    LONG_UNTIL: String(Date.now() + work.minutes * 60_000),
    CASES_SEED: String(work.seed),
  };
  const files = lawFiles(work.only);
  const many = vitest(files.filter(asksHowMany), {
    ...common,
    LAW_RUNS: String(work.cars),
    FUZZ_RUNS: String(work.files),
  });
  const others = vitest(
    files.filter((path) => !asksHowMany(path)),
    { ...common, CASES: String(work.cases), LONG_SECONDS: String(work.seconds) },
  );
  const lines = existsSync(tally) ? readFileSync(tally, "utf8").trim().split("\n") : [];
  const tallies = lines.filter(Boolean).map((line) => JSON.parse(line) as Tally);
  return { passed: many && others, counts: countsOf(tallies) };
}

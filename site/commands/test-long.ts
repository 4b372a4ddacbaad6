import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { keepTable } from "../bench/keep-table.js";
import { inRoot } from "../build/paths.js";
import { keepRecord, recordsOf, tableOf } from "./long/record.js";
import { runShard } from "./long/shard.js";
import { reportFaults } from "./report-faults.js";
import { optionsOf, UsageError } from "./usage.js";

const usage = `Usage: npm run test:long -- --shard 2/5 --write

  --shard     one of several, such as 2/5, or some, such as 1-5/5 (1-5/5 when left out)
  --seed      where its cases begin (1 when left out)
  --only      parts of names of test files to keep to, such as edge,fuzz
  --cars, --files, --cases
              how many are tried by all shards together
  --seconds, --minutes
              how long one law takes in all shards, and one shard
  --write     keep the table in docs/long-tests.md`;

/** How far all shards go together; each can be set for a shorter or a longer run. */
const asked = () =>
  optionsOf({
    options: {
      shard: { type: "string", default: "1-5/5" },
      seed: { type: "string", default: "1" },
      only: { type: "string", default: "" },
      cars: { type: "string", default: "100000" },
      files: { type: "string", default: "100000" },
      cases: { type: "string", default: "1000000" },
      seconds: { type: "string", default: "30" },
      minutes: { type: "string", default: "38" },
      write: { type: "boolean", default: false },
      help: { type: "boolean", default: false },
    },
  });

type Asked = ReturnType<typeof asked>["values"];

const lengths = ["seed", "cars", "files", "cases", "seconds", "minutes"] as const;
type Lengths = Readonly<Record<(typeof lengths)[number], number>>;

function lengthsFrom(values: Asked): Lengths {
  const entries = lengths.map((name) => {
    const number = Number(values[name]);
    if (!(number > 0 && number <= 1e9))
      throw new UsageError(`${name} takes a number above 0 and up to 1e9, not ${values[name]}.`);
    return [name, number];
  });
  return Object.fromEntries(entries);
}

/** Shards to run, and how many there are: 2/5, or 1-5/5. */
function chosenShards(text: string): { shards: number[]; of: number } {
  const [, from = "", to = from, of = ""] = /^(\d+)(?:-(\d+))?\/(\d+)$/.exec(text) ?? [];
  const [first, last, count] = [Number(from), Number(to), Number(of)];
  if (!(first >= 1 && last >= first && count >= last))
    throw new UsageError(
      `shard takes one of several, such as 2/5, or some, such as 1-5/5, not ${text}.`,
    );
  return { shards: Array.from({ length: last - first + 1 }, (_, i) => first + i), of: count };
}

const git = (...args: string[]): string =>
  spawnSync("git", args, { cwd: inRoot("."), encoding: "utf8" }).stdout.trim();

/** The commit at hand, with a mark where files differ from it. */
function commitNow(): string {
  const changed = git("status", "--porcelain", "--untracked-files=no", "--", ":!docs") !== "";
  return git("rev-parse", "--short=12", "HEAD") + (changed ? "+" : "");
}

function run(
  shard: number,
  of: number,
  { commit, only, lengths }: { commit: string; only: readonly string[]; lengths: Lengths },
): boolean {
  const part = (total: number) => Math.ceil(total / of / 100) * 100; // so that tenths are whole
  const seed = lengths.seed * 1000 + shard;
  const started = performance.now();
  console.log(`\nShard ${shard} of ${of}, seed ${seed}`);
  const { passed, counts } = runShard({
    cars: part(lengths.cars),
    files: part(lengths.files),
    cases: part(lengths.cases),
    seconds: lengths.seconds / of,
    minutes: lengths.minutes,
    seed,
    only,
  });
  const minutes = (performance.now() - started) / 60_000;
  const date = new Date().toISOString().slice(0, 10);
  keepRecord({ shard, of, seed, commit, only, date, minutes, passed, counts });
  for (const [kind, { laws, tried, cut }] of Object.entries(counts))
    console.log(`${kind}: ${tried} tried by ${laws} laws${cut > 0 ? `, ${cut} cut short` : ""}`);
  return passed;
}

await reportFaults(async () => {
  const { values } = asked();
  if (values.help) return console.log(usage);
  const { shards, of } = chosenShards(values.shard);
  const lengths = lengthsFrom(values);
  const commit = commitNow();
  const only = values.only.split(",").filter(Boolean);
  const passed = shards.map((shard) => run(shard, of, { commit, only, lengths }));
  const table = tableOf(recordsOf(commit, only, of), of);
  console.log(`\n${table}`);
  if (values.write) {
    const path = inRoot("docs/long-tests.md");
    const marks = { opening: "<!-- run -->", ending: "<!-- end -->" };
    writeFileSync(path, keepTable(readFileSync(path, "utf8"), marks, table));
  }
  if (passed.includes(false)) process.exitCode = 1;
});

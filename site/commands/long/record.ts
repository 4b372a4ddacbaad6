import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { inRoot } from "../../build/paths.js";
import { type Counts, kinds } from "./tally.js";

/** One shard of the long run as it went. */
export interface ShardRecord {
  readonly shard: number;
  readonly of: number;
  readonly seed: number;
  readonly commit: string;
  /** Parts of the names of files to which it kept; none when it ran all laws. */
  readonly only: readonly string[];
  /** Day on which it ended, as 2026-11-28. */
  readonly date: string;
  readonly minutes: number;
  readonly passed: boolean;
  readonly counts: Counts;
}

const folder = inRoot(".cache/long");

/** How the files of one run begin: other laws, or other code, are another run. */
const runName = (commit: string, only: readonly string[]): string =>
  [commit, ...only.map(encodeURIComponent)].join("+");

export function keepRecord(record: ShardRecord): void {
  mkdirSync(folder, { recursive: true });
  const { commit, only, shard, of } = record;
  writeFileSync(
    `${folder}/${runName(commit, only)}-${shard}-of-${of}.json`,
    JSON.stringify(record),
  );
}

/** Shards of a run that this machine has kept, in their order. */
export function recordsOf(commit: string, only: readonly string[], of: number): ShardRecord[] {
  const names = existsSync(folder) ? readdirSync(folder) : [];
  return names
    .filter(
      (name) => name.startsWith(`${runName(commit, only)}-`) && name.endsWith(`-of-${of}.json`),
    )
    .map((name) => JSON.parse(readFileSync(`${folder}/${name}`, "utf8")) as ShardRecord)
    .sort((one, other) => one.shard - other.shard);
}

const number = (value: number): string =>
  String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, "\u00a0");

const row = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;

function rowOf({ shard, of, seed, date, minutes, passed, counts }: ShardRecord): string {
  const cut = kinds.reduce((sum, kind) => sum + counts[kind].cut, 0);
  const tried = kinds.map((kind) => number(counts[kind].tried));
  const result = passed ? "green" : "red";
  return row([
    `${shard}/${of}`,
    date,
    String(seed),
    minutes.toFixed(0),
    ...tried,
    `${cut}`,
    result,
  ]);
}

/** The table of a run, its sum below, and a sentence for shards that are missing. */
export function tableOf(records: readonly ShardRecord[], of: number): string {
  const head = ["shard", "day", "seed", "minutes", ...kinds, "cut short", "result"];
  const sums = kinds.map((kind) =>
    number(records.reduce((sum, { counts }) => sum + counts[kind].tried, 0)),
  );
  const minutes = records.reduce((sum, record) => sum + record.minutes, 0);
  const total = row(["together", "", "", minutes.toFixed(0), ...sums, "", ""]);
  const rows = [row(head), row(head.map(() => "---")), ...records.map(rowOf), total];
  const there = new Set(records.map(({ shard }) => shard));
  const missing = Array.from({ length: of }, (_, i) => i + 1).filter((i) => !there.has(i));
  const commit = records[0]?.commit ?? "none";
  const said =
    missing.length > 0 ? ` Missing: ${missing.map((i) => `${i}/${of}`).join(", ")}.` : "";
  const kept = records[0]?.only.map((part) => `*${part}*`).join(" or ");
  const narrowed = kept ? ` Laws of files with ${kept} in their names only.` : "";
  return `Commit ${commit}, ${records.length} of ${of} shards.${narrowed}${said}\n\n${rows.join("\n")}`;
}

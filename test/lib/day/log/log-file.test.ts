import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { exampleLog } from "../../../../lib/day/example/example-event.js";
import { readEntry } from "../../../../lib/day/log/entry-file.js";
import { emptyLog, type LogEntry } from "../../../../lib/day/log/log.js";
import { formatLog, logFiles, logFromJson, readLog } from "../../../../lib/day/log/log-file.js";
import { mergeLogs } from "../../../../lib/day/log/merge.js";
import { standing } from "../../../../lib/day/log/standing.js";
import { FUZZ_RUNS } from "../../../fuzz.js";
import { anyLog } from "./any-log.js";

vi.setConfig({ testTimeout: 60_000 + 10 * FUZZ_RUNS }); // many cars, or many files, in each test

test("whatever log is written, reading it gives the same log", () => {
  fc.assert(
    fc.property(anyLog, (log) => {
      const merged = mergeLogs(log);
      expect(readLog(formatLog(merged))).toEqual({ log: merged });
    }),
    { numRuns: 60 },
  );
});

test("the example and the empty log survive the way through a file", () => {
  expect(readLog(formatLog(exampleLog)).log).toEqual(exampleLog);
  expect(readLog(formatLog(emptyLog)).log).toEqual(emptyLog);
});

test.each<[unknown, string]>([
  [[], "The file must be one JSON object: a log with its entries."],
  [{ entries: [] }, 'kind is missing but must be "rollbook log": this is no log file.'],
  [{ kind: "rollbook log", version: 4, entries: [] }, "version is 4 but must be 2 or 3."],
  [
    { kind: "rollbook log", version: 1, entries: [] },
    "version is 1: its reports may count balance the other way round, above 0 for the rear, so they are not taken in.",
  ],
  [{ kind: "rollbook log", version: 3, entries: 3 }, "entries is 3 but must be a list."],
])("%j is refused with one sentence: %s", (json, sentence) => {
  expect(logFromJson(json).faults).toEqual([sentence]);
});

describe("a log of version 2", () => {
  const at = "2031-05-10T09:00:00.000Z";
  const [setUp] = exampleLog.entries.filter(({ kind }) => kind === "set-up");
  const [event] = exampleLog.entries.filter(({ kind }) => kind === "event");
  const withoutAuthor = ({ author: _, ...entry }: LogEntry) => entry;
  const run = { kind: "run", id: "k3f9ab2c-1", at, setUp: "desk-1", driver: "Ada" };
  const report = {
    kind: "report",
    id: "k3f9ab2c-2",
    at,
    run: "k3f9ab2c-1",
    report: { balance: 1 },
  };
  const others = [
    report,
    { kind: "prediction", id: "desk-7", at, setUp: "desk-1", expects: "no change", reason: "So." },
    { kind: "note", id: "desk-8", at, words: "Rain." },
    { kind: "withdrawal", id: "desk-9", at, of: "desk-8", reason: "Not so." },
  ];
  const file = (...entries: unknown[]) => ({ kind: "rollbook log", version: 2, entries });
  const old = { ...run, run: 2, car: 1, conditions: "dry, light wind" };

  test("is read: the device stands for authors, a run has its number, car and conditions", () => {
    const { log } = logFromJson(file(old, ...others));
    expect(log?.entries.find(({ kind }) => kind === "run")).toEqual({
      ...run,
      author: "k3f9ab2c",
      runNumber: 2,
      carNumber: 1,
      conditions: { words: "dry, light wind" },
    });
    expect(log?.entries.find(({ kind }) => kind === "report")).toEqual({
      ...report,
      author: "k3f9ab2c",
    });
    expect(log?.entries).toHaveLength(5);
    expect(standing(log ?? emptyLog, "note")).toEqual([]);
  });

  test("gives days and set-ups as they were", () => {
    if (setUp === undefined || event === undefined) throw new Error("the example has both");
    const { log } = logFromJson(file(withoutAuthor(setUp), withoutAuthor(event)));
    expect(log).toEqual(mergeLogs({ entries: [setUp, event] })); // written by the device "desk"
  });

  test("is the same entry by entry, as a device keeps it, and merges with its new form", () => {
    const { entry } = readEntry(old);
    const { log } = logFromJson(file(old));
    expect(log?.entries).toEqual([entry]);
    const now = readLog(formatLog(log ?? emptyLog)).log ?? emptyLog;
    expect(mergeLogs(log ?? emptyLog, now).entries).toHaveLength(1);
  });

  test("may hold a run without number, car and conditions, or with none in words", () => {
    expect(readEntry(run).entry).toEqual({ ...run, author: "k3f9ab2c" });
    expect(readEntry({ ...run, conditions: "" }).entry).toEqual({ ...run, author: "k3f9ab2c" });
    expect(readEntry({ ...run, run: 0 }).faults).toEqual([
      "runNumber is 0 but must be a whole number from 1 to 1000.",
    ]);
  });

  test("knows no other kinds", () => {
    expect(logFromJson(file({ ...run, kind: "rum" })).faults?.[0]).toContain('kind is "rum"');
  });
});

test("text that is no JSON is refused with a sentence", () => {
  expect(readLog('{"kind":').faults?.[0]).toMatch(/^The file is not JSON: .+\.$/s);
});

test("sound entries of a corrupt log are kept for those who want them", () => {
  const entries = [...exampleLog.entries.slice(0, 3), { kind: "run" }];
  const read = logFromJson({ kind: "rollbook log", version: 3, entries });
  expect(read.faults?.[0]).toMatch(/^Entry 4: id /);
  expect(read.faults === undefined ? [] : read.sound.entries).toHaveLength(3);
});

test("a file tells a hundred faults and how many there are", () => {
  const entries = Array.from({ length: 500 }, () => ({ kind: "rum" }));
  const read = logFromJson({ kind: "rollbook log", version: 3, entries });
  expect(read.faults).toHaveLength(100);
  expect(read.faults === undefined ? 0 : read.faultCount).toBe(500);
});

test("a byte order mark in front is no fault", () => {
  expect(readLog(`\uFEFF${formatLog(exampleLog)}`).log).toEqual(exampleLog);
});

test("a log that is too long for one file is whole again from several", () => {
  const files = logFiles(exampleLog, 20_000);
  expect(files.length).toBeGreaterThan(2);
  expect(mergeLogs(...files.map((text) => readLog(text).log ?? emptyLog))).toEqual(exampleLog);
  expect(logFiles(exampleLog)).toEqual([formatLog(exampleLog)]);
  expect(logFiles(emptyLog)).toEqual([formatLog(emptyLog)]);
});

describe("whatever its parts are, a log is refused in short sentences:", () => {
  const deep = (levels: number) => JSON.parse("[".repeat(levels) + "]".repeat(levels));
  const long = "x".repeat(1_000_000);
  const [event] = standing(exampleLog, "event");
  const many = Array.from({ length: 125_000 }, () => 1);
  const file = (entry: object) => ({ kind: "rollbook log", version: 3, entries: [entry] });
  test.each<[string, unknown]>([
    ["a kind that is deep", { kind: deep(20_000) }],
    ["a version that is deep", { kind: "rollbook log", version: deep(20_000) }],
    ["a version that is no number", { kind: "rollbook log", version: { toString: 1 } }],
    ["entries that are deep", { kind: "rollbook log", version: 3, entries: { a: deep(20_000) } }],
    ["an entry of a long kind", file({ kind: long })],
    ["an entry of a deep kind", file({ kind: deep(20_000) })],
    ["an id that is no text", file({ kind: "run", id: { toString: 1 } })],
    ["an id that is long", file({ ...event, id: "y".repeat(9_000) })],
    [
      "a car of a version that is no number",
      file({ kind: "set-up", car: { version: { toString: 1 } } }),
    ],
    ["many drivers", file({ ...event, drivers: many })],
    ["many corners", file({ ...event, venue: { ...event?.venue, corners: many } })],
  ])("%s", (_, json) => {
    const { faults = [] } = logFromJson(json);
    expect(faults.length).toBeGreaterThan(0);
    for (const fault of faults) expect(fault.length).toBeLessThan(300);
  });
});

test("an entry nested without end is refused, not followed", () => {
  let deep: unknown = 1;
  for (let i = 0; i < 5000; i++) deep = { more: deep };
  const [run] = exampleLog.entries.filter(({ kind }) => kind === "run");
  const json = { kind: "rollbook log", version: 3, entries: [{ ...run, deep }] };
  expect(logFromJson(json).faults).toEqual(["Entry 1: is nested deeper than 60."]);
});

/** A few entries of every kind, so that many of them are soon read. */
const short = {
  kind: "rollbook log",
  version: 3,
  entries: ["event", "set-up", "run", "report", "prediction", "poll", "note"].flatMap((kind) =>
    exampleLog.entries.filter((entry) => entry.kind === kind).slice(0, 1),
  ),
};

type Spot = readonly [holder: Record<string, unknown>, key: string];

/** Every place in a value, deep ones included. */
function spotsOf(value: unknown): Spot[] {
  if (typeof value !== "object" || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((key): Spot[] => [[holder, key], ...spotsOf(holder[key])]);
}

/** Wrong wherever a field of a log may stand. */
const nonsense = fc.constantFrom<unknown>(null, true, false, [null], [[]]);

test("a zero is read without its sign, which writing it would lose", () => {
  const signed = formatLog(exampleLog).replace(/: 0([,\n])/, ": -0$1");
  expect(signed).toContain(": -0");
  expect(readLog(signed).log).toEqual(exampleLog);
});

describe("corrupted logs", () => {
  const spots = spotsOf(short).length;

  test("with nonsense in the place of any known field, each is refused with sentences", () => {
    fc.assert(
      fc.property(fc.nat(spots - 1), nonsense, (place, wrong) => {
        const copy = structuredClone(short);
        const [holder, key]: Spot = spotsOf(copy)[place] ?? [{}, ""];
        holder[key] = wrong;
        const read = logFromJson(copy);
        const sentences = read.faults ?? [];
        for (const sentence of sentences) expect(sentence).toMatch(/\.$/);
        expect(sentences.length).toBeGreaterThan(0);
      }),
      { numRuns: FUZZ_RUNS / 2 },
    );
  });

  test("cut off anywhere, each is refused with a sentence", () => {
    const text = formatLog(exampleLog).trimEnd();
    fc.assert(
      fc.property(fc.nat(text.length - 1), (end) => {
        expect(readLog(text.slice(0, end)).faults).toHaveLength(1);
      }),
      { numRuns: FUZZ_RUNS / 4 },
    );
  });

  test("with any characters changed, none crashes and what is read is written again the same", () => {
    const text = JSON.stringify(short);
    const change = fc.tuple(fc.nat(text.length - 1), fc.nat(20), fc.string({ maxLength: 20 }));
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
        const broken = changes.reduce(
          (all, [at, cut, put]) => all.slice(0, at) + put + all.slice(at + cut),
          text,
        );
        const read = readLog(broken);
        if (read.log !== undefined) expect(readLog(formatLog(read.log)).log).toEqual(read.log);
        else for (const sentence of read.faults) expect(sentence).toMatch(/\.$/s);
      }),
      { numRuns: FUZZ_RUNS / 4 },
    );
  });

  test("any JSON at all is refused or read, and never crashes", () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.boolean(), (json, wrapped) => {
        const file = wrapped ? { kind: "rollbook log", version: 3, entries: [json] } : json;
        const read = readLog(JSON.stringify(file));
        expect(read.log === undefined).toBe(true);
        expect(read.faults?.length).toBeGreaterThan(0);
      }),
      { numRuns: FUZZ_RUNS / 10 },
    );
  });
});

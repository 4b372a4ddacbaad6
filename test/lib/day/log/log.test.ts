import { expect, test } from "vitest";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { applyChange } from "../../../../lib/change/apply.js";
import { readEntry } from "../../../../lib/day/log/entry-file.js";
import { emptyLog, type Log, type LogEntry } from "../../../../lib/day/log/log.js";
import { nextId, nowStandingFor, standing } from "../../../../lib/day/log/standing.js";
import { looseEndsOf, versionsOf } from "../../../../lib/day/log/versions.js";

const at = "2031-05-10T09:00:00.000Z";
const run: LogEntry = { kind: "run", id: "desk-1", at, setUp: "desk-9", driver: "Ada" };

test("ids of a device count up, other devices aside", () => {
  const log: Log = {
    entries: [
      { kind: "note", id: "desk-1", at, words: "" },
      { kind: "note", id: "desk-10", at, words: "" },
      { kind: "note", id: "phone-99", at, words: "" },
    ],
  };
  expect(nextId(log, "desk")).toBe("desk-11");
  expect(nextId(emptyLog, "desk")).toBe("desk-1");
});

test("a replaced entry no longer stands, and what refers to it finds the new one", () => {
  const corrected: LogEntry = { ...run, id: "desk-2", replaces: "desk-1", driver: "Bela" };
  const again: LogEntry = { ...run, id: "desk-3", replaces: "desk-2", driver: "Chidi" };
  const log = { entries: [run, corrected, again] };
  expect(standing(log, "run")).toEqual([again]);
  expect(nowStandingFor(log, "run", "desk-1")).toEqual(again);
});

test("a withdrawn entry stays in the log and no longer stands", () => {
  const withdrawal: LogEntry = {
    kind: "withdrawal",
    id: "desk-2",
    at,
    of: "desk-1",
    reason: "typed twice",
  };
  const log = { entries: [run, withdrawal] };
  expect(standing(log, "run")).toEqual([]);
  expect(nowStandingFor(log, "run", "desk-1")).toBeUndefined();
  expect(log.entries).toContain(run);
});

test("entries that replace each other do not hang the search", () => {
  const a: LogEntry = { ...run, id: "desk-1", replaces: "desk-2" };
  const b: LogEntry = { ...run, id: "desk-2", replaces: "desk-1" };
  expect(nowStandingFor({ entries: [a, b] }, "run", "desk-1")).toBeUndefined();
});

test("each version of a set-up tells what is new, and in which car", () => {
  const change = { lever: "tyrePressure", end: "rear", by: -10e3 } as const;
  const next = applyChange(demoCar, change);
  const log: Log = {
    entries: [
      { kind: "set-up", id: "desk-1", at, car: demoCar },
      { kind: "set-up", id: "desk-2", at, car: next, follows: "desk-1" },
    ],
  };
  const [first, second] = versionsOf(log);
  expect(first?.changes).toEqual([]);
  expect(second?.changes).toEqual([change]);
  expect(second?.before).toEqual(demoCar);
  expect(second?.measured).toEqual(demoCar);
});

test("versions that follow each other in a circle do not hang", () => {
  const log: Log = {
    entries: [
      { kind: "set-up", id: "desk-1", at, car: demoCar, follows: "desk-2" },
      { kind: "set-up", id: "desk-2", at, car: demoCar, follows: "desk-1" },
    ],
  };
  expect(versionsOf(log)).toHaveLength(2);
});

test("what a log refers to and does not have is told", () => {
  expect(looseEndsOf({ entries: [run] })).toEqual([{ from: "desk-1", to: "desk-9" }]);
});

test.each<[Record<string, unknown>, string]>([
  [
    { ...run, kind: "rum" },
    'kind is "rum" but must be one of: event, set-up, run, report, prediction, poll, note, withdrawal.',
  ],
  [{ ...run, id: "desk" }, 'id is "desk" but must be like "k3f9-12": a device, a dash, a number.'],
  [{ ...run, at: "noon" }, 'at is "noon" but must be a time like "2031-05-04T09:12:33.000Z".'],
  [
    { ...run, at: "2031-13-40T09:12:33.000Z" },
    'at is "2031-13-40T09:12:33.000Z" but must be a time like "2031-05-04T09:12:33.000Z".',
  ],
  [{ ...run, replaces: "desk-1" }, 'replaces is "desk-1", the entry itself.'],
  [
    { kind: "set-up", id: "desk-1", at, car: { ...demoCar, wheelbase: 9 } },
    "car: wheelbase is 9 m but must be from 1.2 to 4 m.",
  ],
])("%j is refused with one sentence", (entry, sentence) => {
  expect(readEntry(entry).faults).toEqual([sentence]);
});

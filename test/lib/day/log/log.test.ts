import { expect, test } from "vitest";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { applyChange } from "../../../../lib/change/apply.js";
import { readEntry } from "../../../../lib/day/log/entry-file.js";
import { emptyLog, type Log, type LogEntry } from "../../../../lib/day/log/log.js";
import { nextId, nowStandingFor, standing } from "../../../../lib/day/log/standing.js";
import { looseEndsOf, versionsOf } from "../../../../lib/day/log/versions.js";

const at = "2031-05-10T09:00:00.000Z";
const author = "desk";
const run: LogEntry = { kind: "run", id: "desk-1", at, author, setUp: "desk-9", driver: "Ada" };

test("ids of a device count up, other devices aside", () => {
  const log: Log = {
    entries: [
      { kind: "note", id: "desk-1", at, author, words: "" },
      { kind: "note", id: "desk-10", at, author, words: "" },
      { kind: "note", id: "phone-99", at, author, words: "" },
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

const takesBack = (number: number, of: number): LogEntry => ({
  kind: "withdrawal",
  id: `desk-${number}`,
  at,
  author,
  of: `desk-${of}`,
  reason: "typed twice",
});

test("a withdrawn entry stays in the log and no longer stands", () => {
  const log = { entries: [run, takesBack(2, 1)] };
  expect(standing(log, "run")).toEqual([]);
  expect(nowStandingFor(log, "run", "desk-1")).toBeUndefined();
  expect(log.entries).toContain(run);
});

test("a withdrawal that is taken back itself no longer counts, in whatever order they lie", () => {
  const [first, second, third] = [takesBack(2, 1), takesBack(3, 2), takesBack(4, 3)];
  expect(standing({ entries: [run, first, second] }, "run")).toEqual([run]);
  expect(standing({ entries: [second, first, run] }, "run")).toEqual([run]);
  expect(nowStandingFor({ entries: [run, first, second] }, "run", "desk-1")).toEqual(run);
  expect(standing({ entries: [run, first, second, third] }, "run")).toEqual([]);
  expect(standing({ entries: [run, first, second, takesBack(5, 1)] }, "run")).toEqual([]);
});

test("withdrawals that point at each other, or at themselves, hang nothing and all count", () => {
  const circle = [takesBack(2, 3), takesBack(3, 2), takesBack(4, 4)];
  const alsoRun: LogEntry = { ...takesBack(2, 1), id: "desk-2" };
  expect(standing({ entries: [run, ...circle, alsoRun] }, "withdrawal")).toEqual([]);
  expect(standing({ entries: [run, ...circle, alsoRun] }, "run")).toEqual([]);
});

test("a long chain of withdrawals is settled, not followed into the depth", () => {
  const chain = Array.from({ length: 50_000 }, (_, i) => takesBack(i + 2, i + 1));
  expect(standing({ entries: [run, ...chain] }, "run")).toEqual([run]); // by hand: an even number of them
});

test("what any entry may have is read with it, a note too", () => {
  const pressures = {
    what: "hot-pressure",
    quantity: "pressure",
    value: 214e3,
    end: "front",
    side: "left",
    spread: 2e3,
    by: "Bela",
    how: "gauge, in the pits",
  };
  const note = {
    kind: "note",
    id: "desk-1",
    at,
    author: "Ada",
    words: "Rain from the second lap.",
  };
  const about = { carNumber: 2, setUp: "desk-8", run: "desk-9" };
  const conditions = { road: "drying", words: "puddles at the Gate" };
  const entry = { ...note, ...about, conditions, measurements: [pressures] };
  expect(readEntry(entry).entry).toEqual(entry);
});

test("an entry of a kind that came later is kept letter by letter, in its place", () => {
  const later = {
    kind: "tyre-temperatures",
    id: "desk-7",
    at,
    author: "Ada",
    inside: [61, { x: "y" }],
  };
  const { entry } = readEntry(later);
  expect(entry).toEqual(later);
  const log: Log = { entries: entry === undefined ? [] : [run, entry] };
  expect(nextId(log, "desk")).toBe("desk-8");
  const withdrawn: Log = { entries: [...log.entries, takesBack(9, 1)] };
  expect(standing(withdrawn, "run")).toEqual([]);
  expect(looseEndsOf({ entries: [{ ...(entry ?? run), run: "desk-99" } as LogEntry] })).toEqual([
    { from: "desk-7", to: "desk-99" },
  ]);
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
      { kind: "set-up", id: "desk-1", at, author, car: demoCar },
      { kind: "set-up", id: "desk-2", at, author, car: next, follows: "desk-1" },
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
      { kind: "set-up", id: "desk-1", at, author, car: demoCar, follows: "desk-2" },
      { kind: "set-up", id: "desk-2", at, author, car: demoCar, follows: "desk-1" },
    ],
  };
  expect(versionsOf(log)).toHaveLength(2);
});

test("what a log refers to and does not have is told", () => {
  expect(looseEndsOf({ entries: [run] })).toEqual([{ from: "desk-1", to: "desk-9" }]);
});

test.each<[Record<string, unknown>, string]>([
  [
    { kind: "rum", id: "desk-1", at },
    'kind is "rum" but must be one of: event, set-up, run, report, prediction, poll, note, question, vote, happening, measurement, withdrawal.',
  ],
  [{ ...run, id: "desk" }, 'id is "desk" but must be like "k3f9-12": a device, a dash, a number.'],
  [{ ...run, at: "noon" }, 'at is "noon" but must be a time like "2031-05-04T09:12:33.000Z".'],
  [
    { ...run, at: "2031-13-40T09:12:33.000Z" },
    'at is "2031-13-40T09:12:33.000Z" but must be a time like "2031-05-04T09:12:33.000Z".',
  ],
  [{ ...run, replaces: "desk-1" }, 'replaces is "desk-1", the entry itself.'],
  [
    { kind: "set-up", id: "desk-1", at, author, car: { ...demoCar, wheelbase: 9 } },
    "car: wheelbase is 9 m but must be from 1.2 to 4 m.",
  ],
  [{ ...run, author: 7 }, "author is 7 but must be a text."],
  [{ ...run, carNumber: 0 }, "carNumber is 0 but must be a whole number from 1 to 50."],
  [
    { ...run, conditions: { road: "icy" } },
    'conditions.road is "icy" but must be one of: dry, damp, wet, drying.',
  ],
  [
    { ...run, measurements: [{ what: "mass", quantity: "mass", value: "much" }] },
    'measurements.0.value is "much" but must be from -1000000000000 to 1000000000000.',
  ],
  [
    { ...run, kind: "Later Kind!" },
    'kind is "Later Kind!" but must be one of: event, set-up, run, report, prediction, poll, note, question, vote, happening, measurement, withdrawal.',
  ],
  [
    { ...run, kind: "later", at: "noon" },
    'at is "noon" but must be a time like "2031-05-04T09:12:33.000Z".',
  ],
])("%j is refused with one sentence", (entry, sentence) => {
  expect(readEntry(entry).faults).toEqual([sentence]);
});

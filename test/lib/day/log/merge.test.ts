import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { emptyLog, type NoteEntry } from "../../../../lib/day/log/log.js";
import { conflictsOf, mergeLogs, withEntry } from "../../../../lib/day/log/merge.js";
import { anyEntry, anyLog } from "./any-log.js";

vi.setConfig({ testTimeout: 60_000 }); // many cars, or many files, in each test

const note = (id: string, words: string, at = "2031-05-10T09:00:00.000Z"): NoteEntry => ({
  kind: "note",
  id,
  at,
  author: "desk",
  words,
});

describe("merging is a union", () => {
  test("in whatever order and grouping logs are merged, the result is the same", () => {
    fc.assert(
      fc.property(anyLog, anyLog, anyLog, (a, b, c) => {
        const all = mergeLogs(a, b, c);
        expect(mergeLogs(c, mergeLogs(b, a))).toEqual(all);
        expect(mergeLogs(mergeLogs(a, c), b)).toEqual(all);
      }),
    );
  });

  test("merging again changes nothing", () => {
    fc.assert(
      fc.property(anyLog, anyLog, (a, b) => {
        const all = mergeLogs(a, b);
        expect(mergeLogs(all, a)).toEqual(all);
        expect(mergeLogs(all, emptyLog)).toEqual(all);
      }),
    );
  });

  test("no entry is lost", () => {
    fc.assert(
      fc.property(anyLog, anyLog, (a, b) => {
        const { entries } = mergeLogs(a, b);
        for (const entry of [...a.entries, ...b.entries]) expect(entries).toContainEqual(entry);
      }),
      { numRuns: 30 },
    );
  });
});

test("entries come by time, then by id", () => {
  const early = note("desk-9", "first", "2031-05-10T08:00:00.000Z");
  const { entries } = mergeLogs({
    entries: [note("desk-2", "third"), note("desk-1", "second"), early],
  });
  expect(entries.map(({ id }) => id)).toEqual(["desk-9", "desk-1", "desk-2"]);
});

test("one id for two things is kept twice and told", () => {
  const merged = mergeLogs({ entries: [note("desk-1", "a")] }, { entries: [note("desk-1", "b")] });
  expect(merged.entries).toHaveLength(2);
  expect(conflictsOf(merged)).toEqual([{ id: "desk-1", entries: merged.entries }]);
});

test("the same entry from two devices is no conflict, whatever the order of its fields", () => {
  const { kind, id, at, author, words } = note("desk-1", "a");
  const merged = mergeLogs(
    { entries: [note("desk-1", "a")] },
    { entries: [{ words, author, at, id, kind }] },
  );
  expect(merged.entries).toHaveLength(1);
  expect(conflictsOf(merged)).toEqual([]);
});

test("adding an entry keeps all others", () => {
  fc.assert(
    fc.property(anyLog, anyEntry, (log, entry) => {
      const before = mergeLogs(log);
      const after = withEntry(before, entry);
      expect(after.entries).toEqual(expect.arrayContaining([...before.entries]));
      expect(after.entries).toContainEqual(entry);
    }),
    { numRuns: 30 },
  );
});

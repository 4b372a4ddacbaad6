import {
  demoCar,
  driverRuns,
  emptyLog,
  exampleLog,
  type Log,
  type LogEntry,
  mergeLogs,
  runsOf,
  setUpOfRun,
  standing,
} from "@rollbook/lib";
import { describe, expect, it } from "vitest";
import {
  asDraft,
  draftOf,
  eventToFile,
  isFiled,
  newDraft,
  setUpToFile,
} from "../../../site/pages/workshop/day/draft.js";

const [event] = standing(exampleLog, "event");
if (event === undefined) throw new Error("the example has a day");
const draft = draftOf(event, exampleLog);
if (draft === undefined) throw new Error("the example has its car");

const venue = {
  name: "A field",
  corners: [{ name: "One", direction: "left", radius: 30, speed: 15 }],
} as const;

describe("a day that is planned", () => {
  it("is filed as long as nothing was changed, and not after", () => {
    expect(isFiled(draft, exampleLog)).toBe(true);
    expect(isFiled({ ...draft, minutes: 200 }, exampleLog)).toBe(false);
    expect(isFiled({ ...draft, car: { ...draft.car, name: "Wren" } }, exampleLog)).toBe(false);
  });

  it("is filed as a version that stands for the one before it", () => {
    const body = eventToFile({ ...draft, name: "Another name" }, "desk-1", exampleLog);
    expect(body).toMatchObject({ kind: "event", name: "Another name", replaces: event.id });
    expect(setUpToFile(draft, exampleLog)).toBeUndefined();
  });

  it("brings its car along where the log does not have it", () => {
    const own = newDraft(demoCar, { name: "Mine", venue, driver: "Ada" });
    expect(setUpToFile(own, emptyLog)).toEqual({ kind: "set-up", car: demoCar });
    expect(eventToFile(own, "x-1", emptyLog)?.replaces).toBeUndefined();
  });

  it("comes back from what the device kept, without runs too", () => {
    const empty = newDraft(demoCar, { name: "Mine", venue, driver: "Ada" });
    for (const day of [draft, empty])
      expect(asDraft(JSON.parse(JSON.stringify(day)))).toEqual(JSON.parse(JSON.stringify(day)));
    for (const wrong of [
      {},
      { ...draft, minutes: "long" },
      { ...draft, car: {} },
      { ...draft, steps: [{ kind: "dance" }] },
    ])
      expect(asDraft(wrong)).toBeUndefined();
  });
});

describe("the runs of a day", () => {
  const later = "2031-05-10T14:00:00.000Z";
  const phone: LogEntry[] = [
    {
      kind: "run",
      id: "ab-1",
      at: later,
      author: "ab",
      setUp: "run-4",
      driver: "ada ",
      runNumber: 4,
    },
    {
      kind: "report",
      id: "ab-2",
      at: later,
      author: "ab",
      run: "ab-1",
      report: { corner: "Crest" },
    },
    {
      kind: "prediction",
      id: "ab-3",
      at: later,
      author: "ab",
      setUp: "run-4",
      by: "Ada",
      expects: "no change",
      reason: "too small",
    },
  ];
  const both = mergeLogs(exampleLog, { entries: phone });

  it("come by number and then in the order of the drivers", () => {
    const runs = driverRuns(exampleLog, event);
    expect(runs).toHaveLength(36);
    expect(runs.slice(0, 7).map(({ run, driver }) => `${run} ${driver}`)).toEqual([
      "1 Ada",
      "1 Bela",
      "1 Chidi",
      "1 Dana",
      "1 Emil",
      "1 Farah",
      "2 Ada",
    ]);
  });

  it("take in what a phone filed without the log, by run number and name", () => {
    const ada = driverRuns(both, event).filter(({ run, driver }) => run === 4 && driver === "Ada");
    expect(ada).toHaveLength(1);
    expect(ada[0]?.reports.map(({ id }) => id)).toContain("ab-2");
    expect(ada[0]?.predictions.map(({ id }) => id)).toEqual(["ab-3"]);
    expect(setUpOfRun(both, event, 4)?.id).toBe("desk-5");
  });

  it("belong to the day that was the latest when they were driven, unless their set-up says otherwise", () => {
    const next: Log = mergeLogs(both, {
      entries: [
        { kind: "set-up", id: "cd-1", at: "2031-06-01T08:00:00.000Z", author: "cd", car: demoCar },
        { ...event, id: "cd-2", at: "2031-06-01T08:00:00.000Z", setUp: "cd-1" },
        {
          kind: "run",
          id: "ef-1",
          at: "2031-06-01T09:00:00.000Z",
          author: "ef",
          setUp: "run-1",
          driver: "Ada",
          runNumber: 1,
        },
      ],
    });
    const [first, second] = standing(next, "event");
    if (first === undefined || second === undefined) throw new Error("there are two days");
    expect(runsOf(next, first)).toHaveLength(37);
    expect(runsOf(next, second).map(({ id }) => id)).toEqual(["ef-1"]);
  });

  it("stay with a day when it is filed anew", () => {
    const anew = mergeLogs(exampleLog, {
      entries: [{ ...event, id: "desk-99", at: later, replaces: event.id, minutes: 400 }],
    });
    const [version] = standing(anew, "event");
    expect(version && runsOf(anew, version)).toHaveLength(36);
  });
});

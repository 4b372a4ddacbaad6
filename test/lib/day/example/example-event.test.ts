import { describe, expect, test, vi } from "vitest";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { debriefOf } from "../../../../lib/day/debrief/debrief.js";
import { pollAdvice, pollGain } from "../../../../lib/day/debrief/poll.js";
import { exampleCars } from "../../../../lib/day/example/example-cars.js";
import { exampleLog } from "../../../../lib/day/example/example-event.js";
import { exampleDrivers } from "../../../../lib/day/example/example-reports.js";
import { exampleVenue } from "../../../../lib/day/example/example-venue.js";
import { driverRuns } from "../../../../lib/day/log/driver-runs.js";
import type { LogEntry } from "../../../../lib/day/log/log.js";
import { conflictsOf } from "../../../../lib/day/log/merge.js";
import { isComplete } from "../../../../lib/day/log/report.js";
import { nowStandingFor, standing } from "../../../../lib/day/log/standing.js";
import { looseEndsOf, versionsOf } from "../../../../lib/day/log/versions.js";
import { proposePlan } from "../../../../lib/day/plan/propose.js";
import { rotation } from "../../../../lib/day/plan/rotation.js";
import { sheetOf } from "../../../../lib/day/plan/sheet.js";
import { lateralAccelerationOf } from "../../../../lib/day/plan/venue.js";
import { feltReasonInWords } from "../../../../site/say/felt.js";
import { readerWith } from "../../../../site/say/reader.js";

vi.setConfig({ testTimeout: 60_000 }); // many cars, or many files, in each test

const runs = standing(exampleLog, "run");
const [event] = standing(exampleLog, "event");
const start = event && nowStandingFor(exampleLog, "set-up", event.setUp);
const plan = event && start && { ...event, car: start.car };

test("six drivers drive six runs and report on four places each time", () => {
  expect(runs).toHaveLength(36); // by hand: 6 × 6
  expect(standing(exampleLog, "report")).toHaveLength(144); // by hand: 6 × 6 × 4
  const driven = event === undefined ? [] : driverRuns(exampleLog, event);
  expect(driven).toHaveLength(36);
  for (const { reports } of driven) expect(reports).toHaveLength(4);
});

test("every report says where, when, doing what, and names a corner of the venue", () => {
  const corners = exampleVenue.corners.map(({ name }) => name);
  for (const { report } of standing(exampleLog, "report")) {
    expect(isComplete(report)).toBe(true);
    expect(corners).toContain(report.corner);
  }
});

test("nothing in the log is missing, and no id stands for two things", () => {
  expect(looseEndsOf(exampleLog)).toEqual([]);
  expect(conflictsOf(exampleLog)).toEqual([]);
  expect(new Set(exampleLog.entries.map(({ id }) => id)).size).toBe(exampleLog.entries.length);
});

test("the corners ask for what v²/R says", () => {
  // by hand: 12.5²/18, 27²/85, 18.5²/40, 15.5²/30, 22.5²/60, 33²/120, 19.5²/45
  const byHand = [8.6806, 8.5765, 8.5563, 8.0083, 8.4375, 9.075, 8.45];
  exampleVenue.corners.forEach((corner, i) => {
    expect(lateralAccelerationOf(corner)).toBeCloseTo(byHand[i] ?? 0, 4);
  });
});

test("the plan is the one that the planner proposes for this day, but for a last step of the coach's own", () => {
  const steps = plan && proposePlan(plan).steps;
  const bare = plan?.steps.map(({ note: _, ...step }) => step);
  expect(bare?.slice(0, 5)).toEqual(steps?.slice(0, 5));
  expect(bare?.[5]).toMatchObject({ change: { lever: "barPosition", end: "front", by: 1 } });
});

test("the day takes 262 of its 300 minutes", () => {
  const last = plan && sheetOf(plan).at(-1);
  // by hand: a cycle of three rounds is 45 minutes, 41 where nothing is changed: 4·45 + 2·41
  expect((last?.startsAt ?? 0) + (last?.lasts ?? 0)).toBe(262);
});

test("each driver is in the car, and drives in the round, that the rotation gives them", () => {
  for (const run of runs) {
    const rounds = rotation(exampleDrivers, 2, run.runNumber);
    const stints = rounds.flatMap(({ stints }, round) =>
      stints.map((stint) => ({ ...stint, round })),
    );
    const stint = stints.find(({ driver }) => driver === run.driver);
    expect(run.carNumber).toBe(stint?.car);
    const firstOut = runs
      .filter((other) => other.runNumber === run.runNumber)
      .map(({ at }) => Date.parse(at));
    const minutes = (Date.parse(run.at) - Math.min(...firstOut)) / 60e3;
    expect(minutes).toBe(8 * (stint?.round ?? 0));
  }
});

describe("the set-ups", () => {
  const versions = versionsOf(exampleLog);

  test("change what the plan says, but for the last, where two things were changed", () => {
    expect(versions.map(({ tested }) => tested.length)).toEqual([0, 1, 1, 1, 2]);
    const front = { lever: "barPosition", end: "front" };
    expect(versions.map(({ changes }) => changes)).toEqual([
      [],
      [{ ...front, by: 1 }],
      [{ ...front, by: -1 }],
      [{ lever: "barPosition", end: "rear", by: 1 }],
      [
        { ...front, by: 1 },
        { lever: "tyrePressure", end: "front", by: -30e3 },
      ],
    ]);
  });

  test("differ by no more than that", () => {
    for (const { other, measured } of versions) {
      expect(other).toEqual([]);
      expect(measured).toEqual(demoCar);
    }
    expect(exampleCars.twoChanges.front.tyre.pressure.left).toBe(170e3);
  });
});

describe("the debrief", () => {
  const debrief = event === undefined ? [] : debriefOf(exampleLog, event);
  const groupOf = (run: number, corner: string) =>
    debrief.find((one) => one.run === run)?.group.find((cell) => cell.corner === corner);

  test("gives reasons in the reader's units", () => {
    const reasons = debrief.flatMap(({ drivers }) =>
      drivers.flatMap(({ cells }) =>
        cells.flatMap((cell) =>
          cell.reasons.map((reason) => feltReasonInWords(reason, readerWith("us"))),
        ),
      ),
    );
    expect(reasons.join(" ")).toMatch(/by 0\.0\d+\sg towards/);
    expect(reasons.join(" ")).not.toContain("m/s²");
  });

  test("compares every driver in every run but the first", () => {
    expect(debrief.map(({ run }) => run)).toEqual([2, 3, 4, 5, 6]);
    for (const { drivers } of debrief) expect(drivers).toHaveLength(6);
  });

  test("is the same for a driver whose name was once written in lower case after a space", () => {
    const entries = exampleLog.entries.map((entry) =>
      entry.kind === "run" && entry.driver === "Bela" && entry.runNumber === 3
        ? { ...entry, driver: " bela" }
        : entry,
    );
    const other = event === undefined ? [] : debriefOf({ entries }, event);
    expect(other.map(({ group }) => group)).toEqual(debrief.map(({ group }) => group));
    for (const { drivers } of other) expect(drivers).toHaveLength(6);
  });

  test("sums up what six drivers felt under braking into the Crest with the stiffer front bar", () => {
    // by hand, run 2 less run 1: 2 1 1 2 1 1: median 1, distances 1 0 0 1 0 0: median 0
    expect(groupOf(2, "Crest")?.felt).toEqual({ median: 1, spread: 0, verdicts: { match: 6 } });
  });

  test("sums up what was felt at the Gate with the stiffer rear bar", () => {
    // by hand, run 4 less run 3: 0 0 −1 −1 0 0: median 0; the model says less than anybody feels there
    expect(groupOf(4, "Gate")?.felt).toEqual({
      median: 0,
      spread: 0,
      verdicts: { match: 4, "felt, not predicted": 2 },
    });
  });

  test("finds more matches than all else together in the runs with one change, and nothing opposite", () => {
    const verdicts = debrief
      .filter(({ run }) => run <= 4)
      .flatMap(({ drivers }) =>
        drivers.flatMap(({ cells }) => cells.map(({ verdict }) => verdict)),
      );
    expect(verdicts.filter((one) => one === "match").length).toBeGreaterThan(verdicts.length / 2);
    expect(verdicts).not.toContain("opposite");
  });

  test("finds that feeling moves by itself in the run without a change", () => {
    const felt = debrief
      .find(({ run }) => run === 5)
      ?.drivers.flatMap(({ cells }) => cells.filter((cell) => cell.felt !== 0));
    // by hand, run 5 less run 4: three are not 0 at the Gate, one at each of the other places
    expect(felt?.map(({ verdict }) => verdict)).toEqual(Array(6).fill("felt, not predicted"));
  });

  test("tells nothing of the run with two changes", () => {
    const verdicts = debrief
      .find(({ run }) => run === 6)
      ?.drivers.flatMap(({ cells }) => cells.map(({ verdict }) => verdict));
    expect(new Set(verdicts)).toEqual(new Set(["confounded"]));
  });
});

test("the first vote asks for a discussion, the second shows what it was good for", () => {
  const [first, second] = standing(exampleLog, "poll");
  expect(first && pollAdvice(first.count, first.right).advice).toBe("discuss"); // 3 of 6
  expect(second && pollAdvice(second.count, second.right).advice).toBe("move on"); // 5 of 6
  // by hand: (5/6 − 3/6) / (1 − 3/6)
  expect(first && second && pollGain(first.count, second.count, first.right)).toBeCloseTo(
    2 / 3,
    12,
  );
});

test("nothing in the example names a driver who is not invented for it", () => {
  const names = new Set(
    exampleLog.entries.flatMap((entry: LogEntry) => ("driver" in entry ? [entry.driver] : [])),
  );
  expect([...names].sort()).toEqual([...exampleDrivers].sort());
});

import { describe, expect, test } from "vitest";
import {
  type EventEntry,
  entriesOfDay,
  exampleLog,
  figuresOf,
  formatLog,
  type HappeningEntry,
  type Log,
  type LogEntry,
  type MeasurementEntry,
  measurable,
  measuredIn,
  measuredOfDay,
  mergeLogs,
  readEntry,
  readLog,
  setUpOfRun,
  standing,
  standingCar,
} from "../../../../lib/index.js";
import { predictedCircle } from "../../../../lib/measure/circle-predicted.js";

const [event] = standing(exampleLog, "event") as [EventEntry];
const plus = (...entries: readonly LogEntry[]): Log => mergeLogs(exampleLog, { entries });
const head = { at: "2031-05-10T15:00:00.000Z", author: "desk", day: event.id } as const;
const laps = (times: readonly number[]) => [
  { ...measurable.circleRadius, value: 20 },
  ...times.map((value) => ({ ...measurable.circleLap, value })),
];

/** m/s² of laps of a circle of 20 m: 4π²R/T², the mean (ISO 4138, constant radius). */
const turn = (times: readonly number[]) =>
  times.reduce((sum, time) => sum + (4 * Math.PI ** 2 * 20) / time ** 2, 0) / times.length;
const set = (run: number) => {
  const { car } = setUpOfRun(exampleLog, event, run) ?? {};
  const { car: measured } = setUpOfRun(exampleLog, event, 1) ?? {};
  if (car === undefined || measured === undefined) throw new Error("the example has all its runs");
  return standingCar(car, measured);
};

describe("what was measured of a change", () => {
  test("is each driver against himself, on all runs with the one set-up and the other", () => {
    const told = measuredIn(exampleLog, event, 4);
    const pairs = [
      [turn([9.21, 9.14, 9.19]), turn([9.08, 9.15, 9.1])], // Ada, runs 1 and 4
      [turn([9.15, 9.18, 9.11]), turn([9.12, 9.06, 9.17])], // runs 3 and 5, both as in 1 and 4
      [turn([9.36, 9.29, 9.41]), turn([9.22, 9.31, 9.25])], // Bela, the same
      [turn([9.3, 9.27, 9.38]), turn([9.29, 9.21, 9.27])],
    ].map(([before = 0, after = 0]) => after - before);
    const mean = pairs.reduce((sum, one) => sum + one, 0) / 4;
    expect(told?.circle?.difference.value).toBeCloseTo(mean, 9);
    expect(told?.circle?.difference.paired).toBe(true);
    expect(told?.circle?.difference.measured).toBe(false);
    const model = [4, 3].map((run) => predictedCircle(set(run).handling, 20).limit);
    expect(told?.circle?.predicted).toBeCloseTo((model[0] ?? 0) - (model[1] ?? 0), 9);
    expect(told?.changes).toHaveLength(1);
  });

  test("of a run without a change is luck, held against the run before alone", () => {
    const told = measuredIn(exampleLog, event, 5);
    const ada = turn([9.12, 9.06, 9.17]) - turn([9.08, 9.15, 9.1]);
    const bela = turn([9.29, 9.21, 9.27]) - turn([9.22, 9.31, 9.25]);
    expect(told?.circle?.difference.value).toBeCloseTo((ada + bela) / 2, 9);
    expect(told?.circle?.predicted).toBe(0);
    expect(told?.circle?.difference.measured).toBe(false);
  });

  test("leaves out runs that do not count, on another road, or of which the laps were taken back", () => {
    const happened = (more: Pick<HappeningEntry, "what" | "runNumber"> & Partial<HappeningEntry>) =>
      ({ ...head, kind: "happening", id: "desk-90", ...more }) as HappeningEntry;
    const without = plus(happened({ what: "run does not count", runNumber: 4 }));
    expect(measuredIn(without, event, 5)).toBeUndefined();
    const rain = { what: "weather", runNumber: 5, conditions: { road: "wet" } } as const;
    expect(measuredIn(plus(happened({ ...rain, stage: "teach" })), event, 5)).toBeUndefined();
    const back: LogEntry[] = [23, 24, 43, 44].map((number, i) => ({
      ...{ kind: "withdrawal", id: `desk-9${i}`, at: head.at, author: "desk" },
      ...{ of: `desk-${number}`, reason: "misread" },
    }));
    expect(measuredIn(plus(...back), event, 5)).toBeUndefined();
  });

  test("never holds one driver's laps against another's", () => {
    const other = (id: string, runNumber: number, driver: string, times: number[]) =>
      ({
        ...{ ...head, kind: "measurement", id, runNumber, driver, carNumber: 2 },
        measurements: laps(times),
      }) as MeasurementEntry;
    const entries = [
      other("desk-80", 2, "Dana", [9, 9, 9]),
      other("desk-81", 3, "Farah", [8, 8, 8]),
    ];
    const bare: Log = { entries: exampleLog.entries.filter(({ kind }) => kind !== "measurement") };
    expect(measuredIn(mergeLogs(bare, { entries }), event, 3, 2)).toBeUndefined();
  });

  test("has the roll gradient of both set-ups beside the model's, squares of their doubts added", () => {
    const roll = (id: string, runNumber: number, value: number, spread: number) =>
      ({
        ...{ ...head, kind: "measurement", id, runNumber },
        measurements: [{ ...measurable.rollGradient, value, spread }],
      }) as MeasurementEntry;
    const log = plus(roll("desk-80", 1, 7e-3, 3e-4), roll("desk-81", 2, 5e-3, 4e-4));
    const told = measuredIn(log, event, 2)?.rollGradient;
    expect(told?.difference.value).toBeCloseTo(-2e-3, 12);
    expect(told?.difference.within).toBeCloseTo(1.6448536 * 5e-4, 9); // 3² + 4² = 5²
    expect(told?.difference.measured).toBe(true); // 4 spreads
    expect(told?.predicted).toBeCloseTo(
      figuresOf(set(2)).rollGradient - figuresOf(set(1)).rollGradient,
      12,
    );
  });

  test("has lap times of each driver from the log", () => {
    const withLaps = exampleLog.entries.map((entry) =>
      entry.kind === "run" && entry.driver === "Ada" && (entry.runNumber ?? 9) < 3
        ? { ...entry, lapTimes: entry.runNumber === 1 ? [81, 80.6, 80.8, 84] : [80.1, 80, 80.2] }
        : entry,
    );
    const told = measuredIn({ entries: withLaps }, event, 2)?.lapTime?.difference;
    expect(told?.value).toBeCloseTo(80.1 - 80.8, 9); // the three fastest of each
    expect(told?.paired).toBe(false);
    expect(told?.measured).toBe(true);
  });

  test("where the first set-up was driven again: what drifts evenly is told and taken off", () => {
    const drifting = exampleLog.entries.map((entry) => {
      const { runNumber = 9 } = entry as { runNumber?: number };
      if (entry.kind !== "run" || entry.driver !== "Ada" || runNumber > 3) return entry;
      const base = 80 + 0.5 * runNumber - (runNumber === 2 ? 0.7 : 0); // as run 2 alone has the change
      return { ...entry, lapTimes: [base, base + 0.1, base + 0.2] };
    });
    const [there, back] = [2, 3].map(
      (run) => measuredIn({ entries: drifting }, event, run)?.lapTime?.difference,
    );
    expect(there?.value).toBeCloseTo(-0.7, 9);
    expect(there?.drift?.value).toBeCloseTo(0.5, 9);
    expect([there?.measured, there?.drift?.measured]).toEqual([true, true]);
    expect(back?.value).toBeCloseTo(0.7, 9); // the way back
    // laps scatter by 0.1, three a run, six degrees of freedom: variance of b − (a₁ + a₂)/2 is 1.5·0.1²/3
    expect(there?.within).toBeCloseTo(1.943 * Math.sqrt((1.5 * 0.01) / 3), 3);
  });

  test("comes for each run of the day but the first", () => {
    expect(measuredOfDay(exampleLog, event).map(({ run }) => run)).toEqual([2, 3, 4, 5, 6]);
  });
});

describe("a measurement in the log", () => {
  test("is kept, belongs to its day, and is read again", () => {
    const entries = standing(exampleLog, "measurement");
    expect(entries).toHaveLength(12);
    expect(standing(entriesOfDay(exampleLog, event), "measurement")).toEqual(entries);
    expect(readLog(formatLog(exampleLog)).log).toEqual(exampleLog);
  });

  test("is refused without its day or its numbers", () => {
    const [entry] = standing(exampleLog, "measurement");
    const { day: _, ...noDay } = entry as MeasurementEntry;
    expect(readEntry(noDay).faults).toEqual(["day is missing."]);
    const { measurements: _m, ...bare } = entry as MeasurementEntry;
    expect(readEntry(bare).faults).toEqual(["measurements is missing."]);
  });
});

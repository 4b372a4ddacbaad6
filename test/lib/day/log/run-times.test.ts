import { describe, expect, it } from "vitest";
import {
  exampleLog,
  type LogEntry,
  mergeLogs,
  type RunEntry,
  runBegunAt,
  standing,
} from "../../../../lib/index.js";

const [event] = standing(exampleLog, "event");
if (event === undefined) throw new Error("the example has a day");
const begun = (log = exampleLog, run = 2, car = 1) => runBegunAt(log, event, run, car);
const runs = (run: number, car: number): RunEntry[] =>
  standing(exampleLog, "run").filter((one) => one.runNumber === run && one.carNumber === car);
const withMore = (...more: LogEntry[]) => mergeLogs(exampleLog, { entries: more });
const late = { author: "desk", at: "2031-12-31T23:00:00.000Z" };

describe("when a car went out in a run", () => {
  it("is the first time at which the run was filed for it, car by car", () => {
    for (const car of [1, 2]) {
      const times = runs(2, car).map(({ at }) => at);
      expect(begun(exampleLog, 2, car)).toBe(times.sort()[0]);
    }
    expect(begun(exampleLog, 2, 1)).not.toBe(begun(exampleLog, 1, 1));
  });

  it("stays as it was when something of it is corrected, as after a change that was skipped", () => {
    const corrected = runs(2, 1).map((run, i) => ({
      ...{ ...run, ...late, id: `desk-${900 + i}`, replaces: run.id },
    }));
    expect(begun(withMore(...corrected))).toBe(begun());
  });

  it("is that of the run it is in now, where its number or car was wrong", () => {
    const [first, ...others] = runs(2, 1);
    if (first === undefined) throw new Error("the example has that run");
    const moved = { ...first, ...late, id: "desk-900", replaces: first.id, runNumber: 7 };
    const log = withMore(moved);
    expect(begun(log)).toBe(others.map(({ at }) => at).sort()[0]);
    expect(begun(log, 7)).toBe(late.at);
  });

  it("is not known of what was not filed, was withdrawn, or came from a phone that knew no car", () => {
    expect(begun(exampleLog, 7)).toBeUndefined();
    expect(begun(exampleLog, 2, 3)).toBeUndefined();
    const gone = runs(2, 1).map(({ id }, i) => ({
      ...{
        kind: "withdrawal" as const,
        id: `desk-${900 + i}`,
        ...late,
        of: id,
        reason: "never driven",
      },
    }));
    expect(begun(withMore(...gone))).toBeUndefined();
    const [{ carNumber: _, ...bare } = { id: "" }] = runs(2, 1);
    const phone = { ...bare, ...late, id: "phone9-1", runNumber: 7 } as RunEntry;
    expect(begun(withMore(phone), 7)).toBeUndefined();
  });
});

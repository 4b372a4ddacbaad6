import { describe, expect, it } from "vitest";
import { comparedIn } from "../../../../lib/day/debrief/debrief.js";
import { takeHomesOf } from "../../../../lib/day/debrief/take-home.js";
import { exampleLog } from "../../../../lib/day/example/example-event.js";
import { standing } from "../../../../lib/day/log/standing.js";

const [event] = standing(exampleLog, "event");
if (event === undefined) throw new Error("the example has a day");

describe("what a driver takes home", () => {
  const all = takeHomesOf(exampleLog, event);

  it("is a page for each driver with all of their own and nothing of anybody else's", () => {
    expect(all.map(({ driver }) => driver)).toEqual(event.drivers);
    const reports = all.flatMap(({ runs }) => runs.flatMap((one) => one.reports));
    expect(new Set(reports).size).toBe(standing(exampleLog, "report").length);
    for (const { driver, runs } of all)
      for (const { predictions } of runs)
        expect(predictions.every(({ by, author }) => (by ?? author) === driver)).toBe(true);
  });

  it("lays felt beside the model as the talk does", () => {
    for (const { driver, runs } of all)
      for (const { run, car, cells } of runs) {
        const talked = comparedIn(exampleLog, event, run, car).find((one) => one.driver === driver);
        expect(cells).toEqual(talked?.cells ?? []);
      }
  });

  it("says what each run showed: where one began, how much feeling moves by itself, two things at once", () => {
    for (const { runs } of all) {
      expect(runs[0]?.showed).toBe("nothing-to-compare");
      expect(runs[4]?.showed).toBe("nothing-changed");
      expect(runs[5]?.showed).toBe("confounded");
      for (const { cells, showed } of runs.slice(1, 4)) {
        const same = cells.filter(({ verdict }) => verdict === "match").length;
        expect(showed === "as-predicted").toBe(2 * same > cells.length);
        if (2 * same === cells.length) expect(showed).toBe("mixed");
      }
    }
  });

  it("compares nothing across rain", () => {
    const entries = exampleLog.entries.map((entry) =>
      entry.kind === "run" && entry.runNumber === 3
        ? { ...entry, conditions: { road: "wet" as const } }
        : entry,
    );
    const wet = takeHomesOf({ ...exampleLog, entries }, event);
    for (const { runs } of wet) {
      expect(runs[2]).toMatchObject({ showed: "other-road", cells: [] });
      expect(runs[1]?.showed).not.toBe("other-road");
    }
  });
});

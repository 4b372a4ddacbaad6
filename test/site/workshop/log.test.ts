import { exampleLog, formatLog, formatReports, mergeLogs, standing } from "@rollbook/lib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readFile } from "../../../site/pages/workshop/log/take-in.js";

const fresh = () => ({ id: "new-7", at: "2031-05-11T08:00:00.000Z" });

describe("taking in a file", () => {
  it("reads the log that was saved, with nothing left out", () => {
    expect(readFile(formatLog(exampleLog), fresh)).toEqual({ log: mergeLogs(exampleLog) });
  });

  it("reads the table of reports that was saved", () => {
    const { log } = readFile(`\uFEFF${formatReports(exampleLog)}`, fresh) as { log: unknown };
    const reports = exampleLog.entries.filter(({ kind }) => kind === "report");
    expect(log).toEqual({ entries: reports });
  });

  it("gives each line without an id its own", () => {
    const text = "run;corner;balance\nphone1-1;Dip;1\nphone1-1;Barn;-2\n";
    const taken = readFile(text, fresh, { log: exampleLog });
    expect(taken.faults).toBeUndefined();
    expect(taken.log?.entries.map(({ id }) => id)).toEqual(["new-7", "new-8"]);
  });

  it("tells what is wrong in sentences, and hands out what is sound", () => {
    const entries = [...exampleLog.entries.slice(0, 3), { kind: "run", id: "x" }];
    const taken = readFile(formatLog({ entries } as never), fresh);
    expect(taken.faults?.length).toBeGreaterThan(0);
    expect("sound" in taken && taken.sound.entries).toHaveLength(3);
    const table = "run,driver,balance\n3,Ada,1\n3,Zed,1\n";
    const [event] = standing(exampleLog, "event");
    const read = readFile(table, fresh, { log: exampleLog, event });
    expect("sound" in read && read.sound.entries).toHaveLength(1);
  });

  it("refuses whatever else it is given, and never throws", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.json(),
          fc.string().map((text) => `{${text}`),
        ),
        (text) => {
          const taken = readFile(text, fresh);
          expect(taken.faults?.every((fault) => fault.length > 5)).toBe(true);
        },
      ),
    );
  });
});

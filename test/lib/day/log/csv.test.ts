import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { exampleLog } from "../../../../lib/day/example/example-event.js";
import { formatCsv, parseCsv } from "../../../../lib/day/log/csv.js";
import { driverRuns } from "../../../../lib/day/log/driver-runs.js";
import type { Log, ReportEntry } from "../../../../lib/day/log/log.js";
import { mergeLogs } from "../../../../lib/day/log/merge.js";
import { reportTableColumns } from "../../../../lib/day/log/report-columns.js";
import { formatReports, parseReports, tableToFillIn } from "../../../../lib/day/log/report-csv.js";
import { standing } from "../../../../lib/day/log/standing.js";
import { anyReport, anyText } from "./any-log.js";

vi.setConfig({ testTimeout: 60_000 }); // many cars, or many files, in each test

const fresh = () => ({ id: "desk-1", at: "2031-05-10T09:00:00.000Z" });

describe("a table", () => {
  const header = ["one", "two", "three"];
  const rows = fc.array(fc.tuple(anyText, anyText, anyText), { maxLength: 8 });

  test("comes back as it was written", () => {
    fc.assert(
      fc.property(rows, (cells) => {
        const table = [header, ...cells];
        expect(parseCsv(formatCsv(table)).table).toEqual(table);
      }),
      { numRuns: 1000 },
    );
  });

  test("has no cell that a spreadsheet would run", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const line = formatCsv([[text]]).replace(/^"/, "");
        expect(/^[=+@\t]/.test(line) || /^-(?!\d+(\.\d+)?("?\r\n)$)/.test(line)).toBe(false);
      }),
      { numRuns: 1000 },
    );
  });

  test("is quoted as RFC 4180 says", () => {
    // RFC 4180, section 2: rules 1, 5, 6 and 7
    expect(formatCsv([["a", 'b "c"', "d,e", "f\r\ng"]])).toBe('a,"b ""c""","d,e","f\r\ng"\r\n');
    expect(parseCsv('aaa,"b ""b",ccc\r\nzzz,yyy,xxx').table).toEqual([
      ["aaa", 'b "b', "ccc"],
      ["zzz", "yyy", "xxx"],
    ]);
  });

  test("opens after a spreadsheet has put semicolons, tabs, other line ends or a mark in front", () => {
    const table = [
      ["run", "words"],
      ["desk-1", "a,b"],
    ];
    expect(parseCsv("\uFEFFrun;words\ndesk-1;a,b\n").table).toEqual(table);
    expect(parseCsv("run\twords\rdesk-1\ta,b").table).toEqual(table);
  });

  test("says on which line of the text each row begins, after empty ones and cells of several lines", () => {
    const read = parseCsv('a,b\r\n\r\n"c\nc",d\ne,f');
    expect(read.table === undefined ? [] : read.lines).toEqual([1, 2, 3, 5]);
  });

  test("with a quote that does not close is refused with a sentence", () => {
    expect(parseCsv('a,b\r\n"c,d').fault).toBe("Line 2 has a quote that is not closed properly.");
    expect(parseCsv('"a"b,c').fault).toBe("Line 1 has a quote that is not closed properly.");
    expect(parseCsv('a\n\n"b\nc"\nd,"e').fault).toBe(
      "Line 5 has a quote that is not closed properly.",
    );
  });

  test("never crashes the reader, whatever the text", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('"', ",", "\r", "\n", "'", "=", "a"), maxLength: 30 }),
        (text) => {
          const read = parseCsv(text);
          expect(read.table === undefined).toBe(read.fault !== undefined);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe("the table of reports", () => {
  test("gives back every report of any log", () => {
    fc.assert(
      fc.property(fc.array(anyReport, { maxLength: 6 }), (reports) => {
        const entries = reports.map(
          (report, i): ReportEntry => ({
            kind: "report",
            id: `desk-${i + 1}`,
            at: "2031-05-10T09:00:00.000Z",
            author: "Ada",
            run: "desk-9",
            report: withoutEmpty(report),
          }),
        );
        const log: Log = { entries };
        expect(parseReports(formatReports(log), fresh)).toEqual({ log });
      }),
      { numRuns: 300 },
    );
  });

  test("of the example has a line for each report, with driver and set-up", () => {
    const table = parseCsv(formatReports(exampleLog)).table ?? [];
    expect(table[0]).toEqual(reportTableColumns);
    expect(table).toHaveLength(1 + 144); // by hand: 6 drivers × 6 runs × 4 places
    expect(table[1]?.slice(5, 7)).toEqual(["Ada", "desk-1"]);
    expect(parseReports(formatReports(exampleLog), fresh).log?.entries).toEqual(
      standing(exampleLog, "report"),
    );
  });

  test("of an older version has no authors: the device stands for them, as in the log", () => {
    const text = "id,at,run,driver,balance\r\nk3f9-4,2031-05-10T09:00:00.000Z,k3f9-3,Ada,1\r\n";
    expect(parseReports(text, fresh).log?.entries[0]?.author).toBe("k3f9");
  });

  test("says what is wrong with its first line", () => {
    expect(parseReports("run,balance,mood\r\ndesk-3,9,fine\r\n", fresh).faults?.[0]).toMatch(
      /^Column "mood" is not known; known are: id/,
    );
    expect(parseReports("balance\r\n1", fresh).faults).toEqual([
      "The first line has no column run.",
    ]);
    expect(parseReports("run,words,Words\r\n1,a,b", fresh).faults).toEqual([
      "Column words comes twice.",
    ]);
    expect(parseReports("", fresh).faults).toEqual(["The first line has no column run."]);
  });
});

describe("a table made by hand", () => {
  const [event] = standing(exampleLog, "event");
  const head = "driver,run,corner,phase,input,balance,words";
  const day = { log: exampleLog, event };
  const from = (...lines: readonly string[]) =>
    parseReports([head, ...lines].join("\n"), counting(), day);
  const runOf = (name: string, number: number) =>
    standing(exampleLog, "run").find(
      ({ driver, runNumber }) => driver === name && runNumber === number,
    )?.id;

  test("names runs by number and driver, in any capitals and spaces, and is found in the day", () => {
    const { log } = from(
      "Ada,3,gate,Middle,steady,2,",
      "  aDA ,3,Elsewhere,power on,throttle,\u22121,",
    );
    expect(log?.entries).toEqual([
      {
        ...{ kind: "report", id: "desk-101", at, author: "Ada", run: runOf("Ada", 3) },
        // speed and grade as the example's venue has them
        report: {
          ...{ corner: "Gate", speedClass: "slow", grade: "level" },
          ...{ phase: "middle", input: "steady", balance: 2 },
        },
      },
      {
        ...{ kind: "report", id: "desk-102", at, author: "Ada", run: runOf("Ada", 3) },
        report: { corner: "Elsewhere", phase: "power on", input: "throttle", balance: -1 },
      },
    ]);
  });

  test("brings a run that the plan has and nobody has filed, once", () => {
    if (event === undefined) throw new Error("the example has a day");
    const bare: Log = { entries: exampleLog.entries.filter(({ kind }) => kind === "event") };
    const text = `${head}\nAda,2,Gate,power on,steady,1,\nada,2,Dip,power on,steady,1,\n`;
    const { log } = parseReports(text, counting(), { log: bare, event });
    expect(log?.entries.map(({ kind }) => kind)).toEqual(["run", "report", "report"]);
    const merged = mergeLogs(bare, log ?? bare);
    expect(driverRuns(merged, event)).toMatchObject([{ driver: "Ada", run: 2, reports: [{}, {}] }]);
  });

  test("adds nothing when it is taken in again", () => {
    const { log } = from("Ada,3,Gate,middle,steady,2,", "Bela,4,Dip,power on,throttle,1,loose");
    const merged = mergeLogs(exampleLog, log ?? exampleLog);
    const again = parseReports(`${head}\nAda,3,Gate,middle,steady,2,`, counting(), {
      ...{ log: merged, event },
    });
    expect(mergeLogs(merged, again.log ?? merged)).toEqual(merged);
  });

  test.each<[string, string]>([
    ["Ada,99,Gate,power on,steady,1,", "run is 99 but must be from 1 to 6, the runs of the day."],
    ["Zed,3,Gate,power on,steady,1,", 'driver is "Zed" but must be one of: Ada, Bela, '],
    [",3,Gate,power on,steady,1,", "driver is empty but must be one of: Ada, "],
    ["Ada,third,Gate,power on,steady,1,", 'run is "third" but must be the number of a run'],
    ["Ada,,Gate,power on,steady,1,", "run is empty but must be the number of a run"],
    ["Ada,zz9-1,Gate,power on,steady,1,", 'run is "zz9-1" but the log here has no such run.'],
    [
      "Ada,3,Gate,power on,steady,0x2,",
      'balance is "0x2" but must be a whole number from -3 to 3.',
    ],
    ["Ada,3,Gate,power on,steady,9,", "balance is 9 but must be a whole number from -3 to 3."],
    [
      "Ada,3,Gate,power on,steady,2,pushes, then grips",
      'cell 8 is " then grips", but the first line',
    ],
    ["Ada,3,Gate,corner,steady,2,", 'phase is "corner" but must be one of: '],
  ])("refuses the line %s: %s", (line, sentence) => {
    const read = from("", line, "Ada,1,Gate,power on,steady,1,");
    expect(read.faults).toHaveLength(1);
    expect(read.faults?.[0]?.startsWith(`Line 3: ${sentence}`), read.faults?.[0]).toBe(true);
    expect(read.faults === undefined ? [] : read.sound.entries).toHaveLength(1);
  });

  test("names a driver who did not drive the run it names by its entry", () => {
    const run = runOf("Ada", 3);
    expect(from(`Bela,${run},Gate,power on,steady,1,`).faults).toEqual([
      `Line 2: driver is "Bela" but must be "Ada", who drove run ${run}, or left out.`,
    ]);
    expect(from(`,${run},Gate,power on,steady,1,`).log?.entries[0]?.author).toBe("Ada");
  });

  test("has no balance where the cell is empty or of spaces", () => {
    const { log } = from('Ada,3,Gate,power on,steady," ",');
    expect(log?.entries).toMatchObject([{ report: { corner: "Gate" } }]);
    expect(JSON.stringify(log)).not.toContain("balance");
  });

  test("without a day is refused line by line", () => {
    expect(parseReports(`${head}\nAda,3,Gate,power on,steady,1,`, fresh).faults).toEqual([
      "Line 2: run is 3, but no day is here that has a run of that number.",
    ]);
  });

  test("of very many faults keeps a hundred and their number", () => {
    const read = from(...Array.from({ length: 3000 }, () => "Ada,3,Gate,power on,steady,9,"));
    expect(read.faults).toHaveLength(100);
    expect(read.faults === undefined ? 0 : read.faultCount).toBe(3000);
  });

  test("begins with one that has a line for each driver in each run, which says nothing by itself", () => {
    const table = tableToFillIn(event);
    expect(parseCsv(table).table).toHaveLength(1 + 36); // by hand: 6 drivers × 6 runs
    expect(parseReports(table, counting(), day)).toEqual({ log: { entries: [] } });
    const filled = table.replace("Ada,1,,,,,", "Ada,1,Gate,power on,steady,1,");
    expect(parseReports(filled, counting(), day).log?.entries).toHaveLength(1);
    expect(parseReports(tableToFillIn(), fresh)).toEqual({ log: { entries: [] } });
  });
});

const { at } = fresh();
function counting() {
  let number = 100;
  return () => {
    number += 1;
    return { id: `desk-${number}`, at };
  };
}

/** An empty cell says that nothing was said. */
function withoutEmpty(report: ReportEntry["report"]): ReportEntry["report"] {
  return Object.fromEntries(Object.entries(report).filter(([, value]) => value !== ""));
}

import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { exampleLog } from "../../../../lib/day/example/example-event.js";
import { formatCsv, parseCsv } from "../../../../lib/day/log/csv.js";
import type { Log, ReportEntry } from "../../../../lib/day/log/log.js";
import {
  formatReports,
  parseReports,
  reportTableColumns,
} from "../../../../lib/day/log/report-csv.js";
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
        expect(parseCsv(formatCsv(table))).toEqual({ table });
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

  test("with a quote that does not close is refused with a sentence", () => {
    expect(parseCsv('a,b\r\n"c,d').fault).toBe("Line 2 has a quote that is not closed properly.");
    expect(parseCsv('"a"b,c').fault).toBe("Line 1 has a quote that is not closed properly.");
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
        expect(parseReports(formatReports(log), fresh)).toEqual({ entries });
      }),
      { numRuns: 300 },
    );
  });

  test("of the example has a line for each report, with driver and set-up", () => {
    const table = parseCsv(formatReports(exampleLog)).table ?? [];
    expect(table[0]).toEqual(reportTableColumns);
    expect(table).toHaveLength(1 + 144); // by hand: 6 drivers × 6 runs × 4 places
    expect(table[1]?.slice(5, 7)).toEqual(["Ada", "desk-1"]);
    expect(parseReports(formatReports(exampleLog), fresh).entries).toEqual(
      standing(exampleLog, "report"),
    );
  });

  test("may come from paper: other order, few columns, no ids", () => {
    const text = "balance,run,phase,corner,input\r\n\u22122,desk-3,middle,Gate,steady\r\n";
    expect(parseReports(text, fresh).entries).toEqual([
      {
        kind: "report",
        ...fresh(),
        author: "desk",
        run: "desk-3",
        report: { corner: "Gate", phase: "middle", input: "steady", balance: -2 },
      },
    ]);
  });

  test("of an older version has no authors: the device stands for them, as in the log", () => {
    const text = "id,at,run,driver,balance\r\nk3f9-4,2031-05-10T09:00:00.000Z,k3f9-3,Ada,1\r\n";
    expect(parseReports(text, fresh).entries?.[0]?.author).toBe("k3f9");
    const paper = "run,driver,balance\r\nk3f9-3,Ada,1\r\n";
    expect(parseReports(paper, fresh).entries?.[0]?.author).toBe("Ada");
  });

  test("says line by line what is wrong", () => {
    const text = "run,balance,mood\r\ndesk-3,9,fine\r\n";
    expect(parseReports(text, fresh).faults?.[0]).toMatch(
      /^Column "mood" is not known; known are: id/,
    );
    expect(parseReports("balance\r\n1", fresh).faults).toEqual([
      "The first line has no column run.",
    ]);
    expect(parseReports("run,balance\r\ndesk-3,9\r\n", fresh).faults).toEqual([
      "Line 2: report.balance is 9 but must be a whole number from -3 to 3.",
    ]);
  });
});

/** An empty cell says that nothing was said. */
function withoutEmpty(report: ReportEntry["report"]): ReportEntry["report"] {
  return Object.fromEntries(Object.entries(report).filter(([, value]) => value !== ""));
}

import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { demoCar } from "../../lib/car/demo-car.js";
import { formatCar } from "../../lib/car/file/parse.js";
import { reportText } from "../../site/report/report-text.js";
import { setUpReport } from "../../site/report/set-up-report.js";

const folder = mkdtempSync(join(tmpdir(), "report-"));
const asked = { lateralAcceleration: 9, speed: 25 };
const report = setUpReport(demoCar, asked);

function run(content: string, ...options: string[]) {
  const file = join(folder, "car.json");
  writeFileSync(file, content);
  const command = ["node_modules/tsx/dist/cli.mjs", "site/commands/report.ts", file, ...options];
  return spawnSync(process.execPath, command, { encoding: "utf8" });
}

describe("the command", () => {
  test("prints the report of a car file", () => {
    const { status, stdout, stderr } = run(formatCar(demoCar));
    expect([status, stderr]).toEqual([0, ""]);
    expect(stdout).toBe(reportText(report, demoCar, "metric"));
  });

  test("prints the same as JSON in SI units", () => {
    const { status, stdout } = run(formatCar(demoCar), "--json", "--ay", "5");
    const printed = JSON.parse(stdout);
    expect(status).toBe(0);
    expect(printed.asked).toEqual({ lateralAcceleration: 5, speed: 25 });
    expect(printed.mass.total).toBe(1080);
  });

  test("tells unknown fields and goes on", () => {
    const { status, stderr } = run(formatCar({ ...demoCar, colour: "green" } as typeof demoCar));
    expect(status).toBe(0);
    expect(stderr).toBe("Note: colour is not a field this workbook knows: it is kept as it is.\n");
  });

  test.each<[string, string, string[], RegExp]>([
    ["a file that is not JSON", "{", [], /^The file is not JSON: /],
    [
      "a value out of range",
      formatCar({ ...demoCar, wheelbase: 40 }),
      [],
      /^wheelbase is 40 m but/,
    ],
    ["an impossible corner", formatCar(demoCar), ["--ay", "99"], /^--ay is 99 m\/s² but must be/],
    ["a corner that is no number", formatCar(demoCar), ["--ay", "fast"], /^--ay is NaN/],
    ["an unknown option", formatCar(demoCar), ["--fast"], /^Unknown option '--fast'/],
    ["two files", formatCar(demoCar), ["other.json"], /^Usage: /],
  ])("ends with 1 and a sentence for %s", (_, content, options, sentence) => {
    const { status, stdout, stderr } = run(content, ...options);
    expect([status, stdout]).toEqual([1, ""]);
    expect(stderr).toMatch(sentence);
    expect(stderr).not.toContain("    at ");
  });
});

test("the loads in the turn sum to the weight, in a left turn and in a right one", () => {
  for (const turn of ["leftTurn", "rightTurn"] as const) {
    const load = report.inTurn.load?.[turn];
    const sum = load && load.front.left + load.front.right + load.rear.left + load.rear.right;
    expect(sum).toBeCloseTo(1080 * 9.80665, 6);
  }
});

test("a car asked for more than it can do is said to tip over", () => {
  const over = setUpReport(demoCar, { lateralAcceleration: 30, speed: 25 });
  expect(over.inTurn.tipped).toBe(true);
  expect(reportText(over, demoCar, "metric")).toContain("The car tips over");
});

test("the text comes in the units of the reader", () => {
  const us = reportText(report, demoCar, "us");
  expect(us).toContain("2381 lb");
  expect(us).toContain("front spring rate 343\u00a0lbf/in → 371\u00a0lbf/in");
  expect(us).not.toMatch(/ (kPa|N\/mm|mm|kg)\b/);
});

test("no figure of the report is NaN", () => {
  expect(JSON.stringify(report, (_, value) => (Number.isNaN(value) ? "NaN" : value))).not.toContain(
    '"NaN"',
  );
});

test("every key of the report is documented, and every documented key is there", () => {
  const page = readFileSync("docs/report.md", "utf8");
  const table = page.slice(page.indexOf("## Keys"));
  const documented = [...table.matchAll(/^\| (`[^|]+)\|/gm)].flatMap(([, cell = ""]) =>
    [...cell.matchAll(/`([^`]+)`/g)].map(([, key = ""]) => key),
  );
  const first = Object.keys(report).concat("notes");
  const inside = ["asked", "mass", "atRest", "inTurn", "balance"] as const;
  const keys = first.flatMap((key) => {
    const group = inside.find((name) => name === key);
    return group === undefined ? [key] : Object.keys(report[group]).map((name) => `${key}.${name}`);
  });
  const rows = ["changes[].moved", "changes[].broken", "changes[].putBack"];
  expect(documented.sort()).toEqual([...keys, ...rows].sort());
});

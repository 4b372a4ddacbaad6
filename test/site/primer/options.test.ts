import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { formatCar } from "../../../lib/car/file/parse.js";
import { orUndefined } from "../../../lib/refusal.js";
import { optionsOf, outFrom, UsageError, writeOut } from "../../../site/commands/usage.js";
import { forWhom } from "../../../site/primer/for-whom.js";
import { dateFrom, nameFrom, numbersFrom, urlFrom } from "../../../site/primer/options.js";
import { chosen } from "../../../site/primer/parts.js";
import { anyLegalCar } from "../../lib/car/any-car.js";

describe("what cannot be asked of a command", () => {
  const ended = (command: string, ...asked: string[]) => {
    const args = ["--import", "tsx", `site/commands/${command}.ts`, ...asked];
    const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
    return { status, stderr };
  };

  it.each(["primer", "bench", "test-long"])(
    "ends %s with 2 and one sentence, and no trace",
    (command) => {
      const stderr = "Unknown option '--fast'; --help lists the options.\n";
      expect(ended(command, "--fast")).toEqual({ status: 2, stderr });
    },
  );

  it("is a shard or a length that there is not", () => {
    const stderr = "cars takes a number above 0 and up to 1e9, not many.\n";
    expect(ended("test-long", "--cars", "many")).toEqual({ status: 2, stderr });
    expect(ended("test-long", "--shard", "6/5").status).toBe(2);
  });

  it("is an option that is not known, or a file that cannot be written", () => {
    const refused = (args: string[]) => () => optionsOf({ args, options: {} });
    expect(refused(["more"])).toThrow("Unexpected argument 'more'; --help lists the options.");
    expect(() => outFrom("/nowhere/a.html")).toThrow(
      "--out is /nowhere/a.html, which cannot be written (ENOENT).",
    );
    expect(() => outFrom("/")).toThrow("--out is /, which cannot be written (EISDIR).");
    expect(() => writeOut("/", "")).toThrow(UsageError);
  });
});

describe("what a primer is asked for", () => {
  it("refuses a car that can be read and cannot stand, by its name", () => {
    const file = join(mkdtempSync(join(tmpdir(), "primer-")), "car.json");
    const cars = fc.sample(anyLegalCar, { numRuns: 40, seed: 3 });
    const falling = cars.filter(
      (car) => orUndefined(() => standingCar(car).handling) === undefined,
    );
    expect(falling.length).toBeGreaterThan(0);
    for (const car of falling) {
      writeFileSync(file, formatCar(car));
      expect(() => forWhom({ car: file, class: "", us: false })).toThrow(UsageError);
    }
  });

  it("reads a day as it is said, and refuses what is none", () => {
    expect(dateFrom("2026-11-25")).toBe("25 November 2026");
    for (const given of ["2026-02-30", "25.11.2026", "2026-1-2", "", "soon"]) {
      expect(() => dateFrom(given)).toThrow(`date takes a day such as 2026-11-25, not ${given}.`);
    }
  });

  it("takes a name of eighty characters at most", () => {
    expect(nameFrom("  Hill Club ")).toBe("Hill Club");
    expect(() => nameFrom("x".repeat(81))).toThrow("name takes up to 80 characters, not 81.");
  });

  it("takes the address of the live course, with or without its end", () => {
    for (const given of ["https://club.example/course", "https://club.example/course/index.html"])
      expect(urlFrom(given)).toBe("https://club.example/course/");
    expect(urlFrom("http://127.0.0.1:4173")).toBe("http://127.0.0.1:4173/");
    expect(urlFrom("")).toBe("");
    for (const given of [
      "club.example",
      "file:///a",
      "https://a.example/?b",
      "javascript:alert(1)",
    ])
      expect(() => urlFrom(given)).toThrow(
        `url takes an address such as https://club.example/course/, not ${given}.`,
      );
  });

  it("takes chapters by number, all where none is named, each once, in the order of the course", () => {
    const course = ["00-a", "01-b", "02-c"].map((name) => ({ name }));
    const numbers = (given: string) => chosen(course, numbersFrom(given)).map(({ name }) => name);
    expect(numbers("2, 01,2")).toEqual(["01-b", "02-c"]);
    expect(numbers("")).toEqual(["00-a", "01-b", "02-c"]);
    expect(() => numbers("7")).toThrow("chapters: there is no 07; the course has 00, 01, 02.");
    expect(() => numbers("one")).toThrow("chapters takes numbers such as 01,03, not one.");
  });
});

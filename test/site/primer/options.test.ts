import { describe, expect, it } from "vitest";
import { dateFrom, nameFrom, numbersFrom } from "../../../site/primer/options.js";
import { chosen } from "../../../site/primer/parts.js";

describe("what a primer is asked for", () => {
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

  it("takes chapters by number, all where none is named, each once, in the order of the course", () => {
    const course = ["00-a", "01-b", "02-c"].map((name) => ({ name }));
    const numbers = (given: string) => chosen(course, numbersFrom(given)).map(({ name }) => name);
    expect(numbers("2, 01,2")).toEqual(["01-b", "02-c"]);
    expect(numbers("")).toEqual(["00-a", "01-b", "02-c"]);
    expect(() => numbers("7")).toThrow("chapters: there is no 07; the course has 00, 01, 02.");
    expect(() => numbers("one")).toThrow("chapters takes numbers such as 01,03, not one.");
  });
});

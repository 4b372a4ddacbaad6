import { exampleVenue, type Report } from "@rollbook/lib";
import { describe, expect, it } from "vitest";
import { asReporting, tidied, withAnswer } from "../../../../lib/index.js";

describe("a report on the way", () => {
  it("knows speed and grade of a corner of the venue, and forgets them with it", () => {
    const dip = withAnswer({}, "corner", "Dip", exampleVenue);
    expect(dip).toEqual({ corner: "Dip", speedClass: "slow", grade: "downhill" });
    expect(withAnswer(dip, "corner", "behind the barn", exampleVenue)).toEqual({
      corner: "behind the barn",
    });
  });

  it("keeps what was answered for a corner that the venue does not know, as its name is typed", () => {
    let report: Report = {};
    for (const typed of ["H", "Hairpn"]) report = withAnswer(report, "corner", typed, exampleVenue);
    report = withAnswer(report, "speedClass", "slow", exampleVenue);
    report = withAnswer(report, "grade", "uphill", exampleVenue);
    for (const venue of [undefined, exampleVenue])
      expect(withAnswer(report, "corner", "Hairpin", venue)).toEqual({
        corner: "Hairpin",
        speedClass: "slow",
        grade: "uphill",
      });
  });

  it("is filed without answers that say nothing", () => {
    expect(tidied({ corner: "", balance: 0, words: "" })).toEqual({ balance: 0 });
  });

  it("comes back from the device as it was left, or empty where it cannot be read", () => {
    const left = { driver: "Ada", run: 3, report: { corner: "Dip", balance: -2 } };
    expect(asReporting(left)).toEqual(left);
    expect(asReporting({ ...left, report: { balance: 9 } })).toEqual({ ...left, report: {} });
    expect(asReporting({ ...left, run: "3" })).toBeUndefined();
  });
});

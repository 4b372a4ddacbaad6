import {
  comparedIn,
  exampleLog,
  reportsOf,
  runsWithReports,
  standing,
  testedIn,
  triedFrom,
} from "@rollbook/lib";
import { describe, expect, it } from "vitest";
import { balancesOf, placesIn } from "../../../site/pages/workshop/talk/places.js";

const [event] = standing(exampleLog, "event");
if (event === undefined) throw new Error("the example has a day");

describe("the talk after a run", () => {
  it("offers every run that somebody reported on", () => {
    expect(runsWithReports(exampleLog, event)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(reportsOf(exampleLog, event, 2)).toHaveLength(24);
    expect(reportsOf(exampleLog, event, 2, "Dana")).toHaveLength(4);
  });

  it("compares each driver with the run before, never in the first", () => {
    expect(comparedIn(exampleLog, event, 1)).toEqual([]);
    const second = comparedIn(exampleLog, event, 2);
    expect(second.map(({ driver }) => driver)).toEqual([
      "Ada",
      "Bela",
      "Chidi",
      "Dana",
      "Emil",
      "Farah",
    ]);
    const dip = second[0]?.cells.find(({ corner }) => corner === "Crest");
    expect(dip).toMatchObject({ felt: 2, verdict: "match" }); // Ada went from −1 to +1 with a stiffer front bar
  });

  it("marks two changes at once as confounded, for everybody and everywhere", () => {
    const last = comparedIn(exampleLog, event, 6).flatMap(({ cells }) => cells);
    expect(new Set(last.map(({ verdict }) => verdict))).toEqual(new Set(["confounded"]));
    expect(testedIn(exampleLog, event, 6)?.changes).toHaveLength(2);
    expect(testedIn(exampleLog, event, 5)?.changes).toEqual([]);
  });

  it("remembers which single changes were tried from a set-up, and how most found them", () => {
    const tried = triedFrom(exampleLog, event, 1);
    expect(tried.map(({ change }) => change)).toEqual([
      { lever: "barPosition", end: "front", by: 1 },
      { lever: "barPosition", end: "rear", by: 1 },
    ]);
    expect(triedFrom(exampleLog, event, 6)).toEqual([]);
  });

  it("puts the place that asks for most first, and tells no names by the order of its numbers", () => {
    const places = placesIn(reportsOf(exampleLog, event, 4));
    expect(places[0]).toMatchObject({ corner: "Crest", phase: "braking in", middle: -2 });
    expect(balancesOf(places[0]?.reports ?? [])).toEqual([-3, -2, -2, -2, -1, -1]);
  });
});

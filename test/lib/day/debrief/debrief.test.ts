import { describe, expect, it } from "vitest";
import {
  comparedIn,
  reportsOf,
  runsWithReports,
  testedIn,
  triedFrom,
} from "../../../../lib/day/debrief/debrief.js";
import { groupSummary } from "../../../../lib/day/debrief/group.js";
import { cellsToldOf, notAsPredicted } from "../../../../lib/day/debrief/not-as-predicted.js";
import { balancesOf, placesIn } from "../../../../lib/day/debrief/places.js";
import { caseOf } from "../../../../lib/day/diagnosis/case.js";
import { exampleLog } from "../../../../lib/day/example/example-event.js";
import { standing } from "../../../../lib/day/log/standing.js";

const [event] = standing(exampleLog, "event");
if (event === undefined) throw new Error("the example has a day");

describe("the talk after a run", () => {
  it("offers every run that somebody reported on", () => {
    expect(runsWithReports(exampleLog, event)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(reportsOf(exampleLog, event, 2)).toHaveLength(24);
    expect(reportsOf(exampleLog, event, 2, { driver: "Dana" })).toHaveLength(4);
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

  it("tells why in each place where anybody felt something else than was predicted, and nowhere else", () => {
    const cells = comparedIn(exampleLog, event, 2).flatMap((one) => one.cells);
    const other = cells.filter(({ verdict }) => verdict !== "match");
    const places = notAsPredicted(cells);
    expect(places.length).toBeGreaterThan(0);
    for (const { corner, phase, reasons } of places) {
      const here = other.filter((cell) => cell.corner === corner && cell.phase === phase);
      expect(reasons).toEqual(here.flatMap((cell) => cell.reasons));
    }
    expect(places.flatMap(({ reasons }) => reasons)).toHaveLength(
      other.flatMap(({ reasons }) => reasons).length,
    );
  });

  it("tells no reasons of a place of which fewer drivers speak than keep a name secret", () => {
    const two = comparedIn(exampleLog, event, 2).slice(0, 2); // three are the fewest of whom something is told
    const all = comparedIn(exampleLog, event, 2);
    const told = (compared: typeof all) =>
      cellsToldOf(groupSummary(compared.map(({ cells }) => cells)), compared);
    expect(two.flatMap(({ cells }) => cells)).not.toEqual([]);
    expect(told(two)).toEqual([]);
    expect(told(all)).toEqual(all.flatMap(({ cells }) => cells)); // all six speak of every place
  });

  it("gives a diagnosis the car as it was driven, as it was measured, and what was said", () => {
    const given = caseOf(exampleLog, event, 4);
    const setUps = standing(exampleLog, "set-up");
    expect(given?.measured).toEqual(setUps[0]?.car);
    expect(given?.reports).toEqual(reportsOf(exampleLog, event, 4));
    expect(caseOf(exampleLog, event, 4, { driver: "dana " })?.reports).toEqual(
      reportsOf(exampleLog, event, 4, { driver: "Dana" }),
    );
    expect(caseOf({ entries: [event] }, event, 4)).toBeUndefined();
  });
});

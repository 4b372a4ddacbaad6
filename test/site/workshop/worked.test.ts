import { exampleLog, standing } from "@rollbook/lib";
import { describe, expect, it } from "vitest";
import { draftOf } from "../../../site/pages/workshop/day/draft.js";
import { inputOf, workedOut } from "../../../site/pages/workshop/day/worked-out.js";

const [event] = standing(exampleLog, "event");
const day = event && draftOf(event, exampleLog);
if (day === undefined) throw new Error("the example has a day and its car");

describe("a plan that is worked out", () => {
  it("is not worked out again for a name or a note, and has the note that stands there now", () => {
    const before = workedOut(day, exampleLog).rows ?? [];
    const renamed = {
      ...day,
      name: "Another",
      drivers: day.drivers.map((name) => `${name} B.`),
      venue: { ...day.venue, name: "A field", notes: "wet" },
      steps: day.steps.map((step) => ({ ...step, note: "slowly" })),
    };
    const after = workedOut(renamed, exampleLog).rows ?? [];
    expect(after).toHaveLength(6);
    expect(after.map(({ cells }) => cells)).toEqual(before.map(({ cells }) => cells));
    after.forEach((row, i) => {
      expect(row.cells, `run ${row.run}`).toBe(before[i]?.cells); // the very same, not like ones
      expect(row.step.note).toBe("slowly");
    });
  });

  it("is another one with each thing that the model takes in", () => {
    const [first, ...others] = day.venue.corners;
    if (first === undefined) throw new Error("the example has corners");
    const faster = { ...day.venue, corners: [{ ...first, speed: first.speed + 1 }, ...others] };
    const changed = [
      { ...day, minutes: 10 },
      { ...day, cars: 1 },
      { ...day, drivers: day.drivers.slice(1) },
      { ...day, venue: faster },
      { ...day, steps: day.steps.slice(1) },
      { ...day, leastFelt: 1 },
      { ...day, car: { ...day.car, brakeFrontShare: 0.5 } },
    ];
    expect(new Set([day, ...changed].map((one) => inputOf(one, exampleLog))).size).toBe(8);
  });
});

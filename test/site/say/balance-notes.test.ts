import { describe, expect, test } from "vitest";
import type { DifferentialDoubt } from "../../../lib/balance/differential-doubts.js";
import {
  differentialNotes,
  easedNotes,
  nearTippingNotes,
  onStopClauses,
  pressureNote,
  tradeClauses,
  type Write,
  yawNote,
} from "../../../site/say/balance-notes.js";
import { inList } from "../../../site/say/in-list.js";
import { format } from "../../../site/say/units.js";

const write: Write = (quantity, value, decimals) =>
  format(quantity, value, decimals).replaceAll("\u00a0", " ");

describe("sentences on a balance", () => {
  test("say what the car can be given where it cannot be given what is usual", () => {
    const eased = [
      { phase: "braking in", asked: -4, given: -3.14 },
      { phase: "power on", asked: 2, given: 0.96 },
    ] as const;
    expect(easedNotes(eased, write)).toEqual([
      "While braking in the car cannot brake with the usual 4.0 m/s²: its figures there are for 3.1 m/s², nearly the most that it can.",
      "With power on the car cannot gain speed with the usual 2.0 m/s²: its figures there are for 1.0 m/s², nearly the most that it can.",
    ]);
  });

  test("warn of tipping once, with the least threshold, and not again of what is told", () => {
    const near = [
      { phase: "turn-in", tipsOverAt: 10.26 },
      { phase: "middle", tipsOverAt: 10.2 },
    ] as const;
    const [beware, ...more] = nearTippingNotes(near, [], write);
    expect(beware).toMatch(/^Beware: at turn-in and in the middle .* tips over, 10\.20 m\/s² on/);
    expect(more).toEqual([]);
    expect(nearTippingNotes(near, ["middle"], write)[0]).toContain("10.26 m/s²");
    expect(nearTippingNotes(near, ["middle", "turn-in"], write)).toEqual([]);
  });

  test("name another differential that moves nothing, too", () => {
    const doubt: DifferentialDoubt = { end: "front", shifts: [], least: 0.05 };
    expect(differentialNotes([doubt], write)).toEqual([
      "The file does not say what kind of differential the front axle has: figures take it as open. Another kind moves no margin by 0.05 m/s² or more, in the middle or with power on.",
    ]);
  });

  test("tell what the growing yaw rate takes, and are silent where it does not grow", () => {
    expect(yawNote({ "turn-in": -1.07, "power on": 0.05 }, write)[0]).toMatch(
      /further towards understeer by 1\.07 m\/s² at turn-in\.$/,
    );
    expect(yawNote({ "turn-in": 0.2 }, write)).toEqual([]);
  });

  test("put the parts in which one wheel is on one stop together", () => {
    const on = { end: "front", wheel: "outer", stop: "bump" } as const;
    const stops = [
      { ...on, phase: "turn-in" },
      { ...on, wheel: "inner", stop: "droop", phase: "turn-in" },
      { ...on, phase: "middle" },
    ] as const;
    expect(onStopClauses(stops)).toEqual([
      "the outer front wheel is on its bump stop at turn-in and in the middle",
      "the inner front wheel is on its droop stop at turn-in",
    ]);
  });

  test("say better balanced and slower in one breath", () => {
    expect(tradeClauses([{ phase: "middle", better: 0.1, slower: 0.06 }], write)).toEqual([
      "better balanced in the middle, 0.06 m/s² slower",
    ]);
  });

  test("say nothing of pressure where the best is known", () => {
    expect(pressureNote([])).toEqual([]);
    expect(pressureNote(["rear"])[0]).toContain("the rear tyres grip best");
  });
});

test("lists are joined as one says them", () => {
  expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map(inList)).toEqual([
    "",
    "a",
    "a and b",
    "a, b and c",
  ]);
});
